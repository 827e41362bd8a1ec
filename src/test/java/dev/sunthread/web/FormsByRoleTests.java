package dev.sunthread.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import dev.sunthread.access.Role;
import dev.sunthread.journal.Imports;
import dev.sunthread.journal.Sender;
import dev.sunthread.ledger.Door;
import dev.sunthread.testing.KnownPeople;
import dev.sunthread.testing.SignedInAs;
import dev.sunthread.testing.SignedInPerson;
import dev.sunthread.testing.SunthreadTest;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;

/** Nobody is shown a form that somebody with the same rights may not send. */
@SunthreadTest
@SignedInAs({})
class FormsByRoleTests {

    private static final Pattern FORM = Pattern.compile("<form[^>]*action=\"([^\"?]*)[^>]*>");

    @Autowired
    Door door;

    @Autowired
    Imports imports;

    @Autowired
    ApplicationContext context;

    @Autowired
    MockMvc pages;

    @ParameterizedTest
    @EnumSource(Role.class)
    void everyFormThatIsShownMayBeSent(Role role) throws Exception {
        SmallPlant.withRuns(StockedPlant.built(door)).bondWithLot("12:00", "R0002", "A-99");
        String line = String.valueOf(imports.takeLine("no envelope", new Sender("op-1", "shift.ndjson"))
                .orElseThrow()
                .id());
        new KnownPeople(context).add("qe-1", Role.QUALITY);
        List<String> addresses = new ArrayList<>(EveryPage.OF_THE_SMALL_PLANT);
        addresses.addAll(List.of("/inbox/line?id=" + line, "/person?mark=qe-1"));
        Set<String> shown = new TreeSet<>();
        for (String address : addresses) {
            shown.addAll(formsOn(address, role));
        }
        assertThat(shown).isNotEmpty();
        List<String> inVain = new ArrayList<>();
        for (String form : shown) {
            if (!maySend(form, role)) {
                inVain.add(form);
            }
        }
        assertThat(inVain).isEmpty();
    }

    private Set<String> formsOn(String address, Role role) throws Exception {
        MockHttpServletResponse page = pages.perform(
                        get(URI.create(address.replace(" ", "%20"))).with(authentication(SignedInPerson.of(role))))
                .andReturn()
                .getResponse();
        return FORM.matcher(page.getContentAsString())
                .results()
                .filter(form -> form.group().contains("method=\"post\""))
                .map(form -> form.group(1))
                .collect(Collectors.toSet());
    }

    private boolean maySend(String form, Role role) throws Exception {
        return form.equals("/sign-out")
                || pages.perform(post(form).with(authentication(SignedInPerson.of(role))))
                                .andReturn()
                                .getResponse()
                                .getStatus()
                        != 403;
    }
}
