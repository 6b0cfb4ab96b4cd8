package heapwright.process.dose;

import heapwright.knowledge.Id;
import heapwright.process.mixture.Band;
import heapwright.process.mixture.Basis;

/**
 * One figure of the working behind a dose, so that it can be shown.
 *
 * @param key what it is
 * @param value its value in the unit of the key
 * @param basis where it comes from
 */
public record Term(Key key, Band value, Basis basis) {

    static Term of(Key key, double value, Basis basis) {
        return new Term(key, Band.exact(value), basis);
    }

    /** What a figure is, with its unit. */
    public enum Key implements Id {
        PILE_MASS("kg"),
        PILE_VOLUME("m³"),
        PILE_MOISTURE("%"),
        TARGET_MOISTURE("%"),
        MOISTURE_AFTER("%"),
        SURPLUS_WATER("L"),
        MISSING_WATER("L"),
        PILE_CARBON_TO_NITROGEN("ratio"),
        TARGET_CARBON_TO_NITROGEN("ratio"),
        CARBON_TO_NITROGEN_AFTER("ratio"),
        NITROGEN_NEED("g"),
        NITROGEN_SURPLUS("g"),
        NITROGEN_GIVEN("g"),
        SHARE_OF_NEED("%"),
        SHARE_AT_HAND("%"),
        FULL_NEED("kg"),
        AIR_BEFORE("%"),
        AIR_AFTER("%"),
        TARGET_AIR("%"),
        SHARE_OF_PILE_MASS("%"),
        SHARE_OF_PILE_VOLUME("%"),
        SOLUTION_STRENGTH("g/L"),
        TOP_AREA("m²"),
        LAYER_DEPTH("cm"),
        TARGET_VOLUME("m³"),
        DOSE_MASS("g"),
        SODIUM("g"),
        CARBON_GIVEN("g"),
        WATER_GIVEN("L"),
        MOISTURE_RISE("%");

        private final String unit;

        Key(String unit) {
            this.unit = unit;
        }

        public String unit() {
            return unit;
        }
    }
}
