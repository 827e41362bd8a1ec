package dev.sunthread.journal.web;

import dev.sunthread.kernel.Refused;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.web.multipart.MultipartFile;

/** Files of raw data sent from the page, with what they tell of and which column holds which field. */
record RawUpload(
        @Nullable List<MultipartFile> files,
        @Nullable String kind,
        @Nullable String mapping) {

    /** @throws Refused if there is none */
    List<MultipartFile> given() {
        if (files == null || files.stream().allMatch(MultipartFile::isEmpty)) {
            throw new Refused("No file was chosen, or it is empty", "Choose files of raw data");
        }
        return files;
    }
}
