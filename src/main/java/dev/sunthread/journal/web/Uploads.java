package dev.sunthread.journal.web;

import dev.sunthread.journal.ImportSummary;
import dev.sunthread.journal.Imports;
import dev.sunthread.journal.Restores;
import dev.sunthread.journal.Sender;
import dev.sunthread.journal.SentFile;
import dev.sunthread.kernel.Refused;
import java.io.IOException;
import java.io.InputStream;
import org.springframework.stereotype.Service;
import org.springframework.web.multipart.MultipartFile;

/** Hands uploaded files on as streams, unpacked if they are packed. */
@Service
class Uploads {

    private final Imports imports;
    private final Restores restores;
    private final HandedOver handing;

    Uploads(Imports imports, Restores restores, HandedOver handing) {
        this.imports = imports;
        this.restores = restores;
        this.handing = handing;
    }

    UploadReport takeIn(Upload upload) throws IOException {
        Sender sender = handing.over(upload.name());
        UploadReport.Collecting collecting = new UploadReport.Collecting();
        try (InputStream journal = open(upload)) {
            ImportSummary summary = imports.run(journal, sender, upload.goesOn(), collecting::take);
            handing.tookIn(upload.name(), summary);
            return collecting.report(upload.name(), summary);
        }
    }

    long restore(Upload upload) throws IOException {
        try (InputStream journal = open(upload)) {
            return handing.restored(restores.run(journal, count -> {}));
        }
    }

    private static InputStream open(Upload upload) throws IOException {
        MultipartFile file = upload.file();
        if (file == null || file.isEmpty()) {
            throw new Refused("No file was chosen, or it is empty", "Choose a journal file");
        }
        return SentFile.text(file.getInputStream());
    }
}
