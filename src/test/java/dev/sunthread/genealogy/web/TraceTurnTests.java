package dev.sunthread.genealogy.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import dev.sunthread.genealogy.Stage;
import dev.sunthread.genealogy.TraceLimits;
import dev.sunthread.genealogy.TraceProgress;
import dev.sunthread.genealogy.Traced;
import dev.sunthread.genealogy.Traces;
import dev.sunthread.kernel.Busy;
import java.time.Duration;
import java.time.ZoneOffset;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.ui.ExtendedModelMap;
import org.springframework.web.context.request.RequestContextHolder;
import org.springframework.web.context.request.ServletRequestAttributes;

/** What is shown for an answer that is not made in time. */
class TraceTurnTests {

    private static final TraceRequest ASKED =
            new TraceRequest(null, "A-17", null, null, null, null, null, null, null, null);

    private final Traces traces = mock(Traces.class);
    private final MockHttpServletRequest request = new MockHttpServletRequest("GET", "/trace");
    private final MockHttpServletResponse response = new MockHttpServletResponse();
    private final ExtendedModelMap model = new ExtendedModelMap();
    private final TraceTurn turn = new TraceTurn(
            traces,
            new TraceLimits(1, 1, Duration.ZERO, Duration.ZERO, Duration.ZERO, Duration.ZERO, 1),
            () -> "someone",
            ZoneOffset.UTC);

    @BeforeEach
    void isBeingMade() {
        RequestContextHolder.setRequestAttributes(new ServletRequestAttributes(request, response));
        when(traces.within(any(), any(), any()))
                .thenReturn(new Traced(null, new TraceProgress("3f1c", 40, Stage.SEARCH, 0, 5)));
    }

    @AfterEach
    void noRequest() {
        RequestContextHolder.resetRequestAttributes();
    }

    @Test
    void aPageLooksAgainByItself() {
        assertThat(turn.answer(ASKED, LineChoice.ALL, model)).isEmpty();
        assertThat(model).containsKeys("making", "again");
        assertThat(response.getHeader("Refresh")).contains("/trace?", "lot=A-17", "cutoff=40");
    }

    @Test
    void noPageStandsInPlaceOfAFile() {
        request.setParameter("format", "csv");
        assertThatThrownBy(() -> turn.answer(ASKED, LineChoice.ALL, model)).isInstanceOf(Busy.class);
        assertThat(response.getHeader("Refresh")).isNull();
    }
}
