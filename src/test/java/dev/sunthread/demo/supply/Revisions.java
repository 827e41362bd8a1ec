package dev.sunthread.demo.supply;

import dev.sunthread.demo.floor.Floor;
import dev.sunthread.demo.told.PlantTime;
import dev.sunthread.demo.told.Teller;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * Second revisions, which state what raw data must be like: of the recipes once the drifting oven was found, of the
 * specifications once the rig was. Until then a person's word counted, so that what came before is judged by them only
 * when it is judged again. The limits are this plant's own, from no standard.
 */
public final class Revisions {

    private static final int OVEN_FOUND = 26;
    private static final int RIG_FOUND = 39;

    private static final String BAKE = """
            {"recipe": "TIM-150", "revision": "B", "name": "Bake thermal adhesive, judged by its profile",
             "terms": {"thermal": {"sensors": "coldest-and-hottest", "recording": {"longestGap": "180", "fastestChange": "1"},
              "soak": {"window": {"from": "145", "to": "155"}, "minutes": {"least": "60"}}, "peak": {"most": "156"},
              "heating": {"over": "300", "perMinute": {"most": "8"}}, "cooling": {"over": "300", "perMinute": {"most": "15"}},
              "equivalentTime": {"energy": "94900", "reference": "150", "minutes": {"least": "45"}}}}}
            """;

    private static final String LIGHT = """
            {"recipe": "UV-365", "revision": "B", "name": "Fix optics under ultraviolet light, judged by its dose",
             "terms": {"light": {"recording": {"longestGap": "30", "fastestChange": "20"}, "dose": {"least": "40000"},
              "irradiance": {"least": "220", "most": "270"}, "band": "365 nm", "lampHours": "2000"}}}
            """;

    private static final String DWELL = """
            {"recipe": "DWELL-24", "revision": "B", "name": "Let silicone and epoxy stand, judged by the climate",
             "terms": {"dwell": {"recording": {"longestGap": "4000", "fastestChange": "1"}, "hours": {"least": "23.9"},
              "temperature": {"from": "18", "to": "28"}, "humidity": {"from": "35", "to": "70"}}}}
            """;

    private static final String CURVE = """
            {"specification": "%s", "revision": "B", "name": "%s, judged by its curve",
             "terms": {"curves": [{"sweep": "light", "powerOrder": 4, "powerPoints": 7, "shuntPoints": 5, "seriesPoints": 4,
              "translation": {"procedure": "one-of-2009-and-2021", "alpha": "0.0025", "beta": "-0.066", "series": "0.19"},
              "limits": [{"quantity": "short-circuit-current", "bounds": {"least": "%s"}},
                         {"quantity": "fill-factor", "bounds": {"least": "0.7"}},
                         {"quantity": "bypass-steps", "bounds": {"most": "0"}}]}]}}
            """;

    private static final String GROUND = """
            {"specification": "PAN-GND", "revision": "B", "name": "Ground continuity and insulation, judged by readings",
             "terms": {"safety": [
              {"quantity": "ground-resistance", "bounds": {"most": "0.1"}, "applied": "10", "seconds": "2"},
              {"quantity": "insulation-resistance", "bounds": {"least": "40"}, "applied": "1000", "seconds": "60"}]}}
            """;

    private final Teller engineer;

    public Revisions(Floor floor) {
        engineer = floor.notes().teller("pe-01", "engineering");
    }

    public void tell() {
        tell(OVEN_FOUND, "05:10", "recipe", BAKE);
        tell(OVEN_FOUND, "05:12", "recipe", LIGHT);
        tell(OVEN_FOUND, "05:14", "recipe", DWELL);
        tell(RIG_FOUND, "05:10", "specification", CURVE.formatted("WAL-IV", "Current and voltage of a wall", "4"));
        tell(RIG_FOUND, "05:12", "specification", CURVE.formatted("MOD-IV", "Current and voltage of a module", "3.75"));
        tell(RIG_FOUND, "05:14", "specification", GROUND);
    }

    private void tell(int day, String time, String kind, String body) {
        engineer.tell(
                PlantTime.at(day, time), kind, (ObjectNode) JsonMapper.shared().readTree(body));
    }
}
