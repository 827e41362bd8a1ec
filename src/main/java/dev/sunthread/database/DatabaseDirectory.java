package dev.sunthread.database;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import org.springframework.util.FileSystemUtils;

/**
 * The one directory that holds all of the embedded server: its cluster, programs, password, lock and log.
 * It is closed to everyone but its owner, who must be the user running the application.
 */
record DatabaseDirectory(Path home) {

    static DatabaseDirectory prepare(Path home) throws IOException {
        Path absolute = home.toAbsolutePath().normalize();
        if (!Files.exists(absolute)) {
            Files.createDirectories(absolute.getParent());
            Files.createDirectory(absolute, ownerOnly(absolute, "rwx------"));
        }
        refuseForeignOwner(absolute);
        if (isPosix(absolute)) {
            Files.setPosixFilePermissions(absolute, PosixFilePermissions.fromString("rwx------"));
        }
        return new DatabaseDirectory(absolute);
    }

    Path cluster() {
        return home.resolve("cluster");
    }

    Path programs() {
        return home.resolve("programs");
    }

    Path password() {
        return home.resolve("password");
    }

    Path lock() {
        return home.resolve("lock");
    }

    Path log() {
        return home.resolve("server.log");
    }

    boolean holdsCluster() {
        return Files.exists(cluster().resolve("PG_VERSION")) && !Files.exists(unfinished());
    }

    void beginCluster() throws IOException {
        if (!Files.exists(unfinished())) {
            Files.createFile(unfinished());
        }
        // nothing can have been recorded in a cluster whose first start never ended
        FileSystemUtils.deleteRecursively(cluster());
    }

    void finishCluster() throws IOException {
        Files.deleteIfExists(unfinished());
    }

    private Path unfinished() {
        return home.resolve("unfinished");
    }

    private static void refuseForeignOwner(Path home) throws IOException {
        try {
            Path probe = Files.createTempFile(home, "owner", null);
            boolean mine = Files.getOwner(probe).equals(Files.getOwner(home));
            Files.delete(probe);
            if (!mine) {
                throw foreign(home);
            }
        } catch (AccessDeniedException e) {
            throw foreign(home);
        }
    }

    private static DirectoryRefused foreign(Path home) {
        return new DirectoryRefused(
                "The database directory " + home + " belongs to another user than the one running Sunthread.",
                "Run Sunthread as the owner of the directory, or name another one with sunthread.database.directory.");
    }

    static FileAttribute<?>[] ownerOnly(Path path, String permissions) {
        return isPosix(path)
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(permissions))
                }
                : new FileAttribute<?>[0];
    }

    private static boolean isPosix(Path path) {
        return path.getFileSystem().supportedFileAttributeViews().contains("posix");
    }
}
