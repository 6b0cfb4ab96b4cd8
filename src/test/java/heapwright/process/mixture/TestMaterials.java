package heapwright.process.mixture;

import heapwright.knowledge.Figure;
import heapwright.knowledge.Known;
import heapwright.knowledge.Material;
import heapwright.knowledge.Material.Group;
import heapwright.knowledge.Trait;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A few materials with figures of the usual tables, for tests. */
public final class TestMaterials {

    public static final Material LEAVES = material(
            "leaves-mixed",
            Group.CARBON_RICH,
            f(40, 54, 80),
            f(45, 48.6, 52),
            f(15, 38, 60),
            f(80, 150, 270),
            Trait.BROWN,
            Trait.LEAVES);
    public static final Material DRY_LEAVES = material(
            "leaves-old-brown",
            Group.CARBON_RICH,
            f(70, 80, 90),
            f(45, 48, 50),
            f(10, 20, 50),
            f(60, 100, 200),
            Trait.BROWN,
            Trait.LEAVES);
    public static final Material STRAW = material(
            "straw-general",
            Group.CARBON_RICH,
            f(48, 80, 150),
            f(45, 50, 56),
            f(4, 12, 27),
            f(34, 60, 135),
            Trait.BROWN);
    public static final Material STALKS = material(
            "corn-stalks",
            Group.CARBON_RICH,
            f(50, 66, 73),
            f(44, 46.2, 48),
            f(10, 12, 25),
            f(19, 60, 120),
            Trait.BROWN,
            Trait.STALKS);
    public static final Material GRASS = material(
            "grass-clippings",
            Group.NITROGEN_RICH,
            f(9, 17, 25),
            f(45, 50, 57.8),
            f(70, 82, 85),
            f(178, 237, 475),
            Trait.GREEN,
            Trait.GRASS);
    public static final Material KITCHEN = material(
            "kitchen-scraps",
            Group.NITROGEN_RICH,
            f(10, 15, 28.6),
            f(34, 36, 45),
            f(65, 69, 85),
            f(235, 500, 898),
            Trait.GREEN,
            Trait.KITCHEN);
    public static final Material MANURE = material(
            "manure-hen-home", Group.MANURE, f(7, 8, 10), f(38, 42, 45), f(40, 65, 75), f(400, 650, 877), Trait.MANURE);
    public static final Material HORSE = material(
            "manure-horse-straw",
            Group.MANURE,
            f(24, 27, 35),
            f(38, 40.5, 45),
            f(60, 67, 72),
            f(300, 450, 700),
            Trait.MANURE);
    public static final Material CHIPS = material(
            "chips-hardwood",
            Group.WOODY,
            f(451, 560, 819),
            f(48, 50.4, 52),
            f(15, 35, 50),
            f(144, 281, 371),
            Trait.WOODY,
            Trait.COARSE);
    public static final Material TWIGS = material(
            "twigs",
            Group.WOODY,
            f(100, 130, 170),
            f(47, 49, 51),
            f(30, 45, 50),
            f(80, 180, 300),
            Trait.WOODY,
            Trait.COARSE);
    public static final Material COMPOST = material(
            "compost-finished",
            Group.STARTER,
            f(10, 15, 17),
            f(25, 30, 35),
            f(35, 45, 55),
            f(500, 593, 900),
            Trait.STARTER);
    public static final Material ASH =
            fertiliser("wood-ash", Group.MINERAL, f(0, 0, 0), f(356, 400, 500), Trait.ALKALI);
    public static final Material UREA =
            fertiliser("urea", Group.AMENDMENT, f(45, 46, 46), f(650, 750, 770), Trait.FAST_NITROGEN);
    public static final Material SULPHATE =
            fertiliser("ammonium-sulphate", Group.AMENDMENT, f(20.5, 21, 21), f(753, 1000, 1057), Trait.FAST_NITROGEN);
    public static final Material BLOOD_MEAL = material(
            "blood-meal", Group.MEAL, f(3, 3.3, 3.5), f(41, 42.9, 45), f(8, 10, 12), f(500, 600, 700), Trait.MEAL);

    private TestMaterials() {}

    public static Map<String, Material> all() {
        return Stream.of(
                        LEAVES,
                        DRY_LEAVES,
                        STRAW,
                        STALKS,
                        GRASS,
                        KITCHEN,
                        MANURE,
                        HORSE,
                        CHIPS,
                        TWIGS,
                        COMPOST,
                        ASH,
                        UREA,
                        SULPHATE,
                        BLOOD_MEAL)
                .collect(Collectors.toMap(Material::id, Function.identity()));
    }

    public static Figure f(double low, double typical, double high) {
        return new Figure(low, typical, high, "JUDGEMENT", Known.JUDGEMENT);
    }

    public static Material material(
            String id, Group group, Figure ratio, Figure carbon, Figure moisture, Figure density, Trait... traits) {
        double nitrogen = carbon.typical() / ratio.typical();
        return new Material(
                id,
                id,
                group,
                List.of(),
                ratio,
                carbon,
                f(nitrogen, nitrogen, nitrogen),
                false,
                moisture,
                density,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Set.of(traits),
                List.of(),
                Optional.empty(),
                "");
    }

    private static Material fertiliser(String id, Group group, Figure nitrogen, Figure density, Trait... traits) {
        Figure none = f(0, 0, 0);
        return new Material(
                id,
                id,
                group,
                List.of(),
                none,
                none,
                nitrogen,
                true,
                none,
                density,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Set.of(traits),
                List.of(),
                Optional.empty(),
                "");
    }
}
