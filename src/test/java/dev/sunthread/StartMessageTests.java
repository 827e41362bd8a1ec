package dev.sunthread;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class StartMessageTests {

    @Test
    void namesTheAddressAndThatOnlyThisMachineReachesIt() {
        assertThat(StartMessage.text("127.0.0.1", 8080))
                .contains("http://127.0.0.1:8080/")
                .contains("No other machine can");
    }

    @Test
    void warnsWhenOtherMachinesReachIt() {
        assertThat(StartMessage.text("0.0.0.0", 8080)).contains("Other machines can too, through 0.0.0.0");
    }
}
