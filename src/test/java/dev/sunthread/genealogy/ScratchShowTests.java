package dev.sunthread.genealogy;

import dev.sunthread.simulator.SimulatedPlant;
import dev.sunthread.simulator.told.Fault;
import dev.sunthread.simulator.told.Rates;
import dev.sunthread.simulator.told.Told;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class ScratchShowTests {
    @Test
    void run() {
        Rates rates = Rates.NONE;
        for (String f : System.getProperty("fault", "").split(",")) {
            if (!f.isEmpty() && !f.equals("NONE")) {
                rates = rates.with(
                        Fault.valueOf(f.split(":")[0]), f.contains(":") ? Double.parseDouble(f.split(":")[1]) : 0.3);
            }
        }
        SimulatedPlant plant = SimulatedPlant.of(Long.getLong("seed", 0), "p", rates);
        Pattern words = Pattern.compile(System.getProperty("words", "."));
        System.out.println("HAPPENED");
        plant.happenings().stream()
                .map(String::valueOf)
                .filter(s -> words.matcher(s).find())
                .forEach(System.out::println);
        System.out.println("TOLD");
        plant.told().stream()
                .map(Told::toString)
                .filter(s -> words.matcher(s).find())
                .forEach(System.out::println);
        SimulatedTrace trace = SimulatedTrace.of(plant);
        System.out.println("NODES");
        trace.nodes().forEach((t, n) -> {
            if (words.matcher(t.name()).find()) System.out.println(t + " " + n);
        });
        System.out.println("EDGES");
        String of = System.getProperty("node", "");
        trace.edges().stream()
                .filter(e -> !of.isEmpty() && (e.toString().contains("id=" + of + "]")))
                .forEach(System.out::println);
    }
}
