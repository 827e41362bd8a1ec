package dev.sunthread.database;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.StandardOpenOption;

/**
 * Keeps a second application off a directory in use. The operating system gives the lock back when the application
 * ends, however it ends, so a lock file left behind locks nothing.
 */
final class DirectoryLock implements AutoCloseable {

    private final FileChannel channel;

    private DirectoryLock(FileChannel channel) {
        this.channel = channel;
    }

    static DirectoryLock take(DatabaseDirectory directory) throws IOException {
        FileChannel channel = FileChannel.open(directory.lock(), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        if (!isFree(channel)) {
            channel.close();
            throw new DirectoryRefused(
                    "Another Sunthread is running on the database directory " + directory.home() + ".",
                    "Stop that one first, or name another directory with sunthread.database.directory,"
                            + " or let both use one PostgreSQL server through spring.datasource.url.");
        }
        return new DirectoryLock(channel);
    }

    private static boolean isFree(FileChannel channel) throws IOException {
        try {
            return channel.tryLock() != null;
        } catch (OverlappingFileLockException held) {
            return false;
        }
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
