package dev.sunthread.database;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.Base64;

/** The embedded server's password: 256 random bits, drawn once and kept in a file that only its owner can read. */
final class ServerPassword {

    private static final int BYTES = 32;

    private ServerPassword() {}

    static String of(DatabaseDirectory directory) throws IOException {
        Path file = directory.password();
        if (!Files.exists(file)) {
            if (directory.holdsCluster()) {
                throw new DirectoryRefused(
                        "The database in " + directory.home() + " has lost its password file " + file + ".",
                        "Put the file back from a backup, or name another directory with sunthread.database.directory.");
            }
            Files.createFile(file, DatabaseDirectory.ownerOnly(file, "rw-------"));
        }
        if (Files.size(file) == 0) {
            Files.writeString(file, draw());
        }
        return Files.readString(file);
    }

    private static String draw() {
        byte[] bits = new byte[BYTES];
        new SecureRandom().nextBytes(bits);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bits);
    }
}
