package dev.sunthread.testing;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Says through a plant how lots and containers come to be. */
public record Supply(Plant plant) {

    public void containers(String time, String lot, String... labels) {
        List<Map<String, String>> containers =
                Arrays.stream(labels).map(label -> Map.of("label", label)).toList();
        plant.say("container", time, Map.of("lot", lot, "containers", containers));
    }

    /** Mixes lots into one of the item; a component is written {@code LOT} or {@code LOT CONTAINER}. */
    public void blend(String time, String lot, String item, String... components) {
        made("blend", time, lot, item, components);
    }

    public void topUp(String time, String lot, String item, String... components) {
        made("top-up", time, lot, item, components);
    }

    public void split(String time, String lot, String... into) {
        List<Map<String, String>> parts =
                Arrays.stream(into).map(part -> Map.of("lot", part)).toList();
        plant.say("split", time, Map.of("lot", lot, "into", parts));
    }

    public void merge(String time, String into, String... lots) {
        plant.say("merge", time, Map.of("lots", List.of(lots), "into", into));
    }

    public void recover(String time, String unit, String lot, String item) {
        plant.say("recovery", time, Map.of("unit", Plant.unit(unit), "lot", lot, "item", item));
    }

    /** A formula or a structure: each position is written {@code POSITION ITEM}, or with alternates after the item. */
    public void structure(String item, String... positions) {
        plant.say(
                "structure",
                "1 00:10",
                Map.of(
                        "item",
                        item,
                        "revision",
                        "A",
                        "positions",
                        Arrays.stream(positions).map(Supply::position).toList()));
    }

    private void made(String way, String time, String lot, String item, String... components) {
        plant.say(
                "blend",
                time,
                Map.of(
                        "lot",
                        lot,
                        "item",
                        item,
                        "way",
                        way,
                        "components",
                        Arrays.stream(components).map(Supply::component).toList()));
    }

    private static Map<String, Object> position(String written) {
        List<String> parts = List.of(written.split(" "));
        return Map.of("position", parts.get(0), "items", parts.subList(1, parts.size()));
    }

    private static Map<String, String> component(String written) {
        String[] parts = written.split(" ");
        Map<String, String> component = new TreeMap<>(Map.of("lot", parts[0]));
        if (parts.length > 1) {
            component.put("container", parts[1]);
        }
        return component;
    }
}
