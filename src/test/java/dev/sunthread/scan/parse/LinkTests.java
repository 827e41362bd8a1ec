package dev.sunthread.scan.parse;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.scan.gs1.ElementString;
import dev.sunthread.scan.meaning.Reading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** GS1 Digital Links and EPC URIs. */
class LinkTests {

    @ParameterizedTest
    @CsvSource({
        // gs1-syntax-engine at 50657dbd, tests of Digital Link parsing; ^ stands for FNC1
        "https://id.gs1.org/01/09520123456788/10/ABC1/21/12345?17=180426, ^010952012345678810ABC1^2112345^17180426",
        "https://id.gs1.org/00/952012345678912345?02=09520123456788&37=25&10=ABC123, "
                + "^0095201234567891234502095201234567883725^10ABC123",
        "https://id.gs1.org/414/9520123456788/254/32a%2Fb, ^414952012345678825432a/b",
        "https://id.gs1.org/01/12312312312326/21/abc123, ^011231231231232621abc123",
        "HTTPS://example.com/some/stem/01/12312312312333?99=TEST&linkType=all#part, ^011231231231233399TEST"
    })
    void readsALinkAsItsElementString(String link, String elements) {
        Reading reading = Read.sure(link);
        assertThat(ElementString.write(reading.elements()).replace('\u001d', '^'))
                .isEqualTo(elements);
    }

    @Test
    void takesAPlusInThePathForAPlusAndInTheQueryForASpace() {
        // gs1-syntax-engine at 50657dbd: a space is no character of a value
        assertThat(Read.pairs(Read.sure("https://example.com/01/12312312312333/10/A+B")
                        .elements()))
                .endsWith("10=A+B");
        assertThat(Read.pairs(Read.sure("https://example.com/01/12312312312333?99=A%2BB")
                        .elements()))
                .endsWith("99=A+B");
        assertThat(Read.scanned("https://example.com/01/12312312312333?99=A+B").sure())
                .isEmpty();
    }

    // gs1-syntax-engine at 50657dbd: what Digital Link parsing refuses
    @ParameterizedTest
    @ValueSource(
            strings = {
                "https://example.com/10/ABC/22/XYZ",
                "https://example.com/01/12312312312333/10/ABC/22/XYZ",
                "https://example.com/01/12312312312333/",
                "https://example.com/01/12312312312333?999=A",
                "https://example.com/01/12312312312334",
                "hTTps://example.com/01/12312312312333",
                "https://example.com/",
                "https://example.com"
            })
    void leavesUnreadWhatIsNoLink(String link) {
        assertThat(Read.scanned(link).isUnread()).isTrue();
        assertThat(Read.scanned(link).readings().get(0).remarks()).isNotEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        // EPC Tag Data Standard and CBV, as in the test data of RalphTro/epcis-event-hash-generator
        "urn:epc:id:sgtin:4012345.011111.9876, 01=04012345111118 21=9876",
        "urn:epc:id:sscc:4012345.0000000333, 00=040123450000003338",
        "urn:epc:id:sgln:4012345.00011.987, 414=4012345000115 254=987",
        "urn:epc:id:sgln:4012345.00011.0, 414=4012345000115",
        "urn:epc:idpat:sgtin:4012345.011111.*, 01=04012345111118",
        "urn:epc:class:lgtin:4012345.011111.A-7, 01=04012345111118 10=A-7",
        "urn:epc:id:pgln:4012345.00011, 417=4012345000115",
        "urn:epc:id:giai:4012345.55, 8004=401234555"
    })
    void readsAnEpc(String uri, String elements) {
        assertThat(Read.pairs(Read.sure(uri).elements())).isEqualTo(elements);
    }

    @Test
    void leavesAnUnknownEpcUnread() {
        assertThat(Read.scanned("urn:epc:id:xyz:4012345.1").isUnread()).isTrue();
        assertThat(Read.scanned("urn:epc:id:sgtin:4012345.1.2").isUnread()).isTrue();
    }
}
