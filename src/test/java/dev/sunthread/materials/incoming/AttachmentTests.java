package dev.sunthread.materials.incoming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Sealer;
import dev.sunthread.materials.Lots;
import dev.sunthread.materials.Store;
import dev.sunthread.testing.SunthreadTest;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Documents: taken only if they are what was hashed, and given back byte by byte. */
@SunthreadTest
class AttachmentTests {

    /** FIPS 180-2, appendix B.1: the SHA-256 of "abc". */
    private static final String ABC = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

    @Autowired
    Door door;

    @Autowired
    Sealer sealer;

    @Autowired
    Attachments attachments;

    @Autowired
    Lots lots;

    Store store;

    @BeforeEach
    void stocked() {
        store = Store.stocked(door);
    }

    @Test
    void isGivenBackByItsHashUnderTheNameItCameWith() {
        attach("abc", ABC, "text/plain");
        Document document = attachments.document(ABC, sealer.seal()).orElseThrow();
        assertThat(document.content()).isEqualTo("abc".getBytes(StandardCharsets.UTF_8));
        assertThat(document.name()).isEqualTo("paper.txt");
        assertThat(attachments.of(lots.find("A").orElseThrow(), sealer.seal()))
                .extracting(Attached::sha256, Attached::size)
                .containsExactly(org.assertj.core.groups.Tuple.tuple(ABC, 3L));
    }

    @Test
    void isNotGivenOnceItIsVoided() {
        attach("abc", ABC, "text/plain");
        long before = sealer.seal();
        store.plant.undo("09:00", store.plant.lastId());
        assertThat(attachments.document(ABC, sealer.seal())).isEmpty();
        assertThat(attachments.document(ABC, before)).isPresent();
    }

    @Test
    void certificateOfAReleaseIsListedWithTheLot() {
        store.plant.say(
                "attachment",
                "08:00",
                Map.of("name", "paper.txt", "mediaType", "text/plain", "sha256", ABC, "content", "YWJj"));
        assertThat(attachments.of(lots.find("A").orElseThrow(), sealer.seal())).isEmpty();
        store.plant.say(
                "incoming-release",
                "08:10",
                Map.of("lot", "A", "verdict", "released", "inspected", "paper", "certificates", List.of(ABC)));
        assertThat(attachments.of(lots.find("A").orElseThrow(), sealer.seal())).hasSize(1);
    }

    @Test
    void refusesWhatIsNotWhatWasHashed() {
        assertThatThrownBy(() -> attach("abd", ABC, "text/plain"))
                .hasMessageStartingWith("body.sha256: is not the SHA-256 of the content");
    }

    @Test
    void refusesWhatIsNoWholeBase64OrNoMediaTypeOrTooLong() {
        assertThatThrownBy(() -> said("YWJjZ", ABC, "text/plain")).hasMessage("body.content: is no whole base64");
        assertThatThrownBy(() -> said("YWJj", ABC, "plain text")).hasMessage("body.mediaType: is no media type");
        assertThatThrownBy(() -> attach("x".repeat(1_048_577), ABC, "text/plain"))
                .hasMessageStartingWith("body.content: has more than 1048576 bytes");
    }

    private void attach(String content, String sha256, String mediaType) {
        said(Base64.getEncoder().encodeToString(content.getBytes(StandardCharsets.UTF_8)), sha256, mediaType);
    }

    private void said(String base64, String sha256, String mediaType) {
        store.plant.say(
                "attachment",
                "08:00",
                Map.of("name", "paper.txt", "mediaType", mediaType, "sha256", sha256, "content", base64, "lot", "A"));
    }
}
