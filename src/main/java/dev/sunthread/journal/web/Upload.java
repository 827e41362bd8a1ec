package dev.sunthread.journal.web;

import org.jspecify.annotations.Nullable;
import org.springframework.web.multipart.MultipartFile;

/** A journal file sent from the page. */
record Upload(@Nullable MultipartFile file) {

    boolean isEmpty() {
        return file == null || file.isEmpty();
    }

    String name() {
        String name = file == null ? null : file.getOriginalFilename();
        return name == null || name.isBlank() ? "unnamed" : name;
    }
}
