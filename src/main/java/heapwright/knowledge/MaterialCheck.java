package heapwright.knowledge;

import heapwright.pile.MaterialNames;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Checks that the materials can be what their figures say, and that no name stands for two of them. */
final class MaterialCheck {

    /** Carbon of dry matter outside this span cannot be plant or animal matter and needs a word in the note. */
    private static final double CARBON_LOW = 30;

    private static final double CARBON_HIGH = 60;

    private static final double PERCENT = 100;

    /** Figures are told in tenths. */
    private static final double ROUNDING = 0.05;

    /** Nitrogen times C:N is the carbon of the row, within this share: sources print whole numbers. */
    private static final double AGREES_WITHIN = 0.02;

    private final Knowledge knowledge;
    private final List<String> faults = new ArrayList<>();

    MaterialCheck(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    List<String> faults() {
        names();
        knowledge.materials().values().forEach(this::material);
        return List.copyOf(faults);
    }

    private void names() {
        Map<String, String> owner = new HashMap<>();
        for (Material m : knowledge.materials().values()) {
            List<String> names = new ArrayList<>(m.aliases());
            names.add(m.id());
            names.add(m.name());
            for (String name : names) {
                String before = owner.put(MaterialNames.plain(name), m.id());
                if (before != null && !before.equals(m.id())) {
                    faults.add(
                            "materials.json " + m.id() + ": the name \"" + name + "\" is that of " + before + " too");
                }
            }
        }
    }

    private void material(Material m) {
        String where = "materials.json " + m.id();
        for (Figure f : m.figures()) {
            if (!(f.low() <= f.typical() && f.typical() <= f.high() && f.low() >= 0)) {
                faults.add(where + ": figures " + f + " are not low to typical to high");
            }
        }
        if (m.carbonToNitrogen().typical() > 0) {
            carbon(m, where);
        }
        if (m.group() == Material.Group.PROBLEM && m.keepOut().isEmpty()) {
            faults.add(where + ": a problem material must say why it stays out");
        }
    }

    private void carbon(Material m, String where) {
        double carbon = m.carbonPct().typical();
        boolean explained = m.note().contains("% C");
        if ((carbon < CARBON_LOW || carbon > CARBON_HIGH) && !explained) {
            faults.add(where + ": " + carbon + " % carbon is outside 30 to 60 and the note does not say why");
        }
        boolean beyondPlants = carbon > PERCENT / Material.ORGANIC_PER_CARBON && explained;
        if (carbon > m.mostCarbonPct() + ROUNDING && !beyondPlants) {
            faults.add(where + ": " + carbon + " % carbon is more than its ash leaves room for, "
                    + Math.floor(m.mostCarbonPct() * 10) / 10
                    + " %; run src/test/scripts/carbon, or let the note say why");
        }
        double made = m.nitrogenPct().typical() * m.carbonToNitrogen().typical();
        if (Math.abs(made - carbon) > AGREES_WITHIN * carbon) {
            faults.add(where + ": nitrogen of " + m.nitrogenPct().typical() + " % and C:N of "
                    + m.carbonToNitrogen().typical() + " make " + Math.round(made * 10) / 10.0
                    + " % carbon, yet it has "
                    + carbon + " %; derive one of the three and let the note say what is printed");
        }
    }
}
