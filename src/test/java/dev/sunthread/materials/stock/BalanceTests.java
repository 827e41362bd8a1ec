package dev.sunthread.materials.stock;

import static dev.sunthread.materials.stock.Movement.Way.BROUGHT_BACK_TO_THE_STORE;
import static dev.sunthread.materials.stock.Movement.Way.COUNTED;
import static dev.sunthread.materials.stock.Movement.Way.ISSUED_WITHIN_THE_PLANT;
import static dev.sunthread.materials.stock.Movement.Way.RECEIVED;
import static dev.sunthread.materials.stock.Movement.Way.SAMPLED;
import static dev.sunthread.materials.stock.Movement.Way.SCRAPPED;
import static dev.sunthread.materials.stock.Movement.Way.USED;
import static dev.sunthread.materials.stock.Movement.Way.WASTED;
import static dev.sunthread.materials.stock.Movement.Way.WENT_INTO_OTHER_LOTS;
import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.materials.stock.Movement.Way;
import dev.sunthread.testing.Plant;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** The balance by hand: brought in = taken out + on hand + unexplained. */
class BalanceTests {

    /**
     * 100 g came in. By 12:00, 30 + 10 + 5 + 2 = 47 g were used, made into another lot, wasted and sampled: 53 g should
     * be there, 50 g were counted, so 3 g are unexplained. Then 20 g were used: 30 g are on hand.
     */
    @Test
    void whatNoRecordExplainsIsTheRestBesideTheCount() {
        Balance balance = Balance.of(List.of(
                moved("13:00", USED, "20"),
                moved("06:00", RECEIVED, "100"),
                moved("08:00", USED, "30"),
                moved("09:00", WENT_INTO_OTHER_LOTS, "10"),
                moved("10:00", WASTED, "5"),
                moved("11:00", SAMPLED, "2"),
                moved("12:00", COUNTED, "50")));
        assertThat(balance.onHand()).isEqualByComparingTo("30");
        assertThat(balance.unexplained()).isEqualByComparingTo("3");
        assertThat(balance.countedAt()).isEqualTo(Plant.at("12:00"));
        assertThat(quantity(balance, USED)).isEqualByComparingTo("50");
        assertThat(balance.isExact()).isTrue();
        assertThat(balance.overdrawnAt()).isNull();
    }

    /** 1500 mg and 0.0005 kg of 10 g leave 8 g; a piece tells nothing of grams. */
    @Test
    void unitsOfOneDimensionAreToldInOneAnother() {
        Balance balance = Balance.of(List.of(
                moved("06:00", RECEIVED, "10"),
                new Movement(Plant.at("08:00"), USED, new BigDecimal("1500"), "mg", false),
                new Movement(Plant.at("08:10"), USED, new BigDecimal("0.0005"), "kg", false),
                new Movement(Plant.at("08:20"), WASTED, new BigDecimal("1"), "pcs", false)));
        assertThat(balance.onHand()).isEqualByComparingTo("8");
        assertThat(balance.isExact()).isFalse();
    }

    /** 100 - 30 = 70 g, counted as 68 (2 missing); 68 - 8 = 60 g, counted as 61 (1 found): 1 g is missing in all. */
    @Test
    void everyCountAddsWhatItFindsMissing() {
        Balance balance = Balance.of(List.of(
                moved("06:00", RECEIVED, "100"),
                moved("08:00", USED, "30"),
                moved("09:00", COUNTED, "68"),
                moved("10:00", USED, "8"),
                moved("11:00", COUNTED, "61")));
        assertThat(balance.onHand()).isEqualByComparingTo("61");
        assertThat(balance.unexplained()).isEqualByComparingTo("1");
    }

    /** 10 g came in and 12 g went out, the last of it at 09:00: 2 g too many, so one of the scans is wrong. */
    @Test
    void moreTakenOutThanThereWasIsUnexplainedBelowNought() {
        Balance balance = Balance.of(
                List.of(moved("06:00", RECEIVED, "10"), moved("08:00", USED, "7"), moved("09:00", USED, "5")));
        assertThat(balance.onHand()).isEqualByComparingTo("0");
        assertThat(balance.unexplained()).isEqualByComparingTo("-2");
        assertThat(balance.overdrawnAt()).isEqualTo(Plant.at("09:00"));
    }

    /** 100 - 25 = 75 g were there when all that was left was scrapped. */
    @Test
    void allThatWasLeftIsWhatTheRecordsLeave() {
        Balance balance = Balance.of(List.of(
                moved("06:00", RECEIVED, "100"),
                moved("08:00", USED, "25"),
                new Movement(Plant.at("09:00"), SCRAPPED, null, null, true)));
        assertThat(quantity(balance, SCRAPPED)).isEqualByComparingTo("75");
        assertThat(balance.onHand()).isEqualByComparingTo("0");
        assertThat(balance.unexplained()).isEqualByComparingTo("0");
    }

    @Test
    void whatWasIssuedAndBroughtBackIsStillOnHand() {
        Balance balance = Balance.of(List.of(
                moved("06:00", RECEIVED, "100"),
                moved("08:00", ISSUED_WITHIN_THE_PLANT, "40"),
                moved("09:00", BROUGHT_BACK_TO_THE_STORE, "10")));
        assertThat(balance.onHand()).isEqualByComparingTo("100");
        assertThat(quantity(balance, ISSUED_WITHIN_THE_PLANT)).isEqualByComparingTo("40");
    }

    @Test
    void usesWithoutAQuantityOrInAnotherUnitAreToldByTheirNumber() {
        Balance balance = Balance.of(List.of(
                moved("06:00", RECEIVED, "100"),
                moved("08:00", USED, null),
                new Movement(Plant.at("08:10"), USED, new BigDecimal("3"), "pcs", false),
                moved("08:20", USED, "1")));
        assertThat(balance.lines()).contains(new Balance.Line(USED, BigDecimal.ONE, 3, 2));
        assertThat(balance.isExact()).isFalse();
        assertThat(balance.onHand()).isEqualByComparingTo("99");
    }

    @Test
    void whatCameInAndWentOutAtOneMomentCameInFirst() {
        Balance balance = Balance.of(List.of(moved("08:00", USED, "5"), moved("08:00", RECEIVED, "5")));
        assertThat(balance.overdrawnAt()).isNull();
        assertThat(balance.onHand()).isEqualByComparingTo("0");
    }

    @Test
    void nothingRecordedIsAnEmptyBalance() {
        assertThat(Balance.of(List.of()))
                .isEqualTo(new Balance("", List.of(), BigDecimal.ZERO, BigDecimal.ZERO, null, null));
    }

    @Property
    void whatCameInIsWhatWentOutAndIsOnHandAndIsUnexplained(@ForAll("movements") List<Movement> movements) {
        Balance balance = Balance.of(movements);
        BigDecimal in = sum(balance, Movement.Effect.BRINGS);
        BigDecimal out = sum(balance, Movement.Effect.TAKES);
        assertThat(out.add(balance.onHand()).add(balance.unexplained())).isEqualByComparingTo(in);
        assertThat(balance.onHand().signum()).isNotNegative();
    }

    @Provide
    Arbitrary<List<Movement>> movements() {
        return Combinators.combine(
                        Arbitraries.integers().between(10, 20),
                        Arbitraries.of(Way.class),
                        Arbitraries.integers().between(0, 50),
                        Arbitraries.of(true, false))
                .as((hour, way, grams, all) -> new Movement(
                        Plant.at(hour + ":00"),
                        way,
                        BigDecimal.valueOf(grams),
                        "g",
                        all && way.effect() == Movement.Effect.TAKES))
                .list()
                .ofMaxSize(12);
    }

    private static BigDecimal sum(Balance balance, Movement.Effect effect) {
        return balance.lines().stream()
                .filter(line -> line.way().effect() == effect)
                .map(Balance.Line::quantity)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static BigDecimal quantity(Balance balance, Way way) {
        return balance.lines().stream()
                .filter(line -> line.way() == way)
                .map(Balance.Line::quantity)
                .findFirst()
                .orElseThrow();
    }

    private static Movement moved(String time, Way way, @Nullable String grams) {
        return Stream.ofNullable(grams)
                .map(text -> new Movement(Plant.at(time), way, new BigDecimal(text), "g", false))
                .findFirst()
                .orElseGet(() -> new Movement(Plant.at(time), way, null, null, false));
    }
}
