package dev.sunthread.web.inbox;

import dev.sunthread.web.PageDoor;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Records what the signed-in person decided about a kept line or a finding, through the door. */
@Service
class Settlements {

    private final PageDoor door;

    Settlements(PageDoor door) {
        this.door = door;
    }

    /** Settles a finding. */
    void settle(FindingForm form) {
        ObjectNode body = JsonNodeFactory.instance.objectNode();
        body.put("entry", form.entry());
        body.put("finding", form.finding());
        body.put("why", PageDoor.line(form.why()));
        door.say(form.id(), "finding-settlement", body);
    }

    /** Settles a kept line; it was recorded as another envelope, or tells nothing. */
    void settleLine(String line, @Nullable String resubmittedAs, String id, @Nullable String why) {
        ObjectNode body = JsonNodeFactory.instance.objectNode();
        body.put("line", line);
        if (resubmittedAs != null) {
            body.put("resubmittedAs", resubmittedAs);
        }
        body.put("why", PageDoor.line(why));
        door.say(id, "line-settlement", body);
    }
}
