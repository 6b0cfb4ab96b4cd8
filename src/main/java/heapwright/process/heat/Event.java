package heapwright.process.heat;

/** Something done to the pile at the start of a day; day 0 is the first of the run. */
public sealed interface Event {
    /** Day counted from the start of the run, 0 or more. */
    int day();

    /** The whole pile is taken apart and rebuilt: shells mix, air comes in, heat is lost. */
    record Turn(int day) implements Event {}

    /** Sides and upper layers are loosened, the core is left alone. */
    record Loosen(int day) implements Event {}

    /**
     * Water poured over.
     *
     * @param kg litres, 0 or more: what a pile can't hold runs off
     * @param temperatureC its temperature, 0–100 °C
     */
    record Water(int day, double kg, double temperatureC) implements Event {
        public Water {
            Checks.notBelow("kg", kg, 0);
            Checks.within("temperatureC", temperatureC, 0, 100);
        }
    }

    /** The cover or insulation becomes another. */
    record Cover(int day, Envelope envelope) implements Event {}

    /**
     * Material goes in.
     *
     * @param matter what
     * @param temperatureC its temperature, −40 to 80 °C
     * @param mixed whether it is mixed through (heat is lost as when turning) or laid in the outer half
     */
    record Add(int day, Matter matter, double temperatureC, boolean mixed) implements Event {
        public Add {
            Checks.within("temperatureC", temperatureC, -40, 80);
        }
    }

    /**
     * Snow gets into the mix.
     *
     * @param kg its mass, 0 or more
     * @param temperatureC its temperature, −40 to 0 °C
     */
    record SnowIn(int day, double kg, double temperatureC) implements Event {
        public SnowIn {
            Checks.notBelow("kg", kg, 0);
            Checks.within("temperatureC", temperatureC, -40, 0);
        }
    }

    /**
     * Nitrogen fertiliser in solution, counted as ammonium.
     *
     * @param nitrogenKg kg of nitrogen, 0 or more
     * @param waterKg litres it is dissolved in, 0 or more
     * @param temperatureC of the water, 0–100 °C
     */
    record Feed(int day, double nitrogenKg, double waterKg, double temperatureC) implements Event {
        public Feed {
            Checks.notBelow("nitrogenKg", nitrogenKg, 0);
            Checks.notBelow("waterKg", waterKg, 0);
            Checks.within("temperatureC", temperatureC, 0, 100);
        }
    }
}
