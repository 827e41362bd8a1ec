package dev.sunthread.journal.web;

import org.jspecify.annotations.Nullable;
import org.springframework.web.multipart.MultipartFile;

/**
 * A journal file sent from the page.
 *
 * @param goOn whether it is taken in to its end however many lines in a row can't be read
 */
record Upload(@Nullable MultipartFile file, @Nullable Boolean goOn) {

    boolean goesOn() {
        return Boolean.TRUE.equals(goOn);
    }

    boolean isEmpty() {
        return file == null || file.isEmpty();
    }

    String name() {
        String name = file == null ? null : file.getOriginalFilename();
        return name == null || name.isBlank() ? "unnamed" : name;
    }
}
