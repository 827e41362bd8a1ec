package dev.sunthread.cure.kinetics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.sunthread.cure.profile.Readings;
import dev.sunthread.cure.profile.Segment;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Degrees of cure on profiles as loggers write them, noise and all: each ends, and is that of the closed formula. */
class HeldProfilesTests {

    private static final int PROFILES = Integer.getInteger("sunthread.profiles", 10_000);
    private static final long SEED = Long.getLong("sunthread.seed", 1);

    /** Readings of 150.33 and 149.74 degC near the end of a well cured profile. */
    @Test
    void nearlyCuredBondReachesTheEndOfItsProfile() {
        NthOrder reaction = new NthOrder(new Arrhenius(2e5, 62_000), 1.4);
        double start = 0.9969143892322235;
        double found = DegreeOfCure.after(reaction, start, List.of(new Segment(5120, 150.33, 5130, 149.74)));
        // closed formula of nth order at the mean temperature
        double k = reaction.k().at(Arrhenius.kelvin((150.33 + 149.74) / 2));
        double left = Math.pow(Math.pow(1 - start, -0.4) + 0.4 * k * 10, -2.5);
        assertThat(found).isCloseTo(1 - left, within(1e-8));
    }

    @Test
    void tenThousandNoisyProfilesEndWhereTheClosedFormulaSays() {
        Random random = new Random(SEED);
        for (int i = 0; i < PROFILES; i++) {
            double order = 0.3 + random.nextDouble() * 3;
            NthOrder reaction =
                    new NthOrder(new Arrhenius(2 * Math.pow(10, 3 + random.nextDouble() * 5), 62_000), order);
            List<Segment> profile = noisy(random, i % 50 == 0 ? 700 : 60);
            double closed = DegreeOfCure.after(reaction, 0, profile);
            double stepped = new DrivenPath(reaction).after(0, profile);
            assertThat(stepped).as("profile %d of seed %d", i, SEED).isCloseTo(closed, within(1e-7));
            assertThat(closed).isBetween(0.0, 1.0);
        }
    }

    @Test
    void autocatalyticReactionsEndTooHoweverSharplyTheyTurnToGlass() {
        Random random = new Random(SEED);
        for (int i = 0; i < PROFILES / 5; i++) {
            Autocatalytic reaction = new Autocatalytic(
                    new Arrhenius(random.nextDouble() * 1e4, 60_000),
                    new Arrhenius(Math.pow(10, random.nextDouble() * 9), 65_000),
                    random.nextDouble() * 2,
                    0.4 + random.nextDouble() * 2,
                    new Diffusion(random.nextDouble() * 100, -1.5148, 5.171e-3));
            double start = random.nextBoolean() ? 0 : 0.01;
            assertThat(DegreeOfCure.after(reaction, start, noisy(random, 60)))
                    .as("profile %d of seed %d", i, SEED)
                    .isBetween(start, 1.0);
        }
    }

    /** Heated to a hold and cooled, read every 5 to 30 s with a noise of 0.2 K. */
    private static List<Segment> noisy(Random random, int readings) {
        double[] seconds = new double[readings];
        double[] celsius = new double[readings];
        double hold = 100 + random.nextDouble() * 80;
        for (int i = 0; i < readings; i++) {
            seconds[i] = i == 0 ? 0 : seconds[i - 1] + (5 + random.nextDouble() * 25) * 700 / readings;
            double part = (double) i / readings;
            double truth = 25 + (hold - 25) * Math.min(1, Math.min(part * 5, (1 - part) * 7));
            celsius[i] = truth + random.nextGaussian() * 0.2;
        }
        return Readings.of(seconds, celsius).segments();
    }
}
