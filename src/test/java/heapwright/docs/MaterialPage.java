package heapwright.docs;

import heapwright.knowledge.Figure;
import heapwright.knowledge.Material;
import heapwright.knowledge.Material.Bar;
import heapwright.knowledge.Material.Group;
import heapwright.knowledge.Trait;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Every material: its figures with their sources, and what must stay out. */
final class MaterialPage {

    private final Doctrine doctrine;

    MaterialPage(Doctrine doctrine) {
        this.doctrine = doctrine;
    }

    String write() {
        Page page = new Page("Materials");
        page.paragraph(
                "A figure stands as typical (low–high) with its source and how it is known. Carbon and nitrogen are"
                        + " percent of dry mass, moisture percent of wet mass, density kg per cubic metre loose–packed. Where"
                        + " nitrogen was measured on another sample than C:N, the program takes carbon divided by C:N.");
        for (Group group : Group.values()) {
            List<Material> members = doctrine.knowledge.materials().values().stream()
                    .filter(m -> m.group() == group)
                    .toList();
            page.section(title(group));
            page.head("Material", "C:N", "Carbon", "Nitrogen", "Moisture", "Density", "Traits", "Note");
            members.forEach(m -> material(page, m));
        }
        for (Bar bar : Bar.values()) {
            page.section(
                    "Stay out: " + doctrine.catalogue.text("bar." + bar.id()).toLowerCase(Locale.ROOT));
            page.head("Material", "Why", "Instead");
            doctrine.knowledge.materials().values().stream()
                    .filter(m -> m.keepOut().filter(k -> k.bar() == bar).isPresent())
                    .forEach(m -> page.row(
                            Doctrine.link("", m.id(), m.name()),
                            m.keepOut().orElseThrow().reason(),
                            m.keepOut().orElseThrow().instead()));
        }
        return page.write();
    }

    private void material(Page page, Material m) {
        page.row(
                "<a id=\"" + m.id() + "\"></a>" + m.name() + "<br>`" + m.id() + "`",
                figure(m.carbonToNitrogen()),
                figure(m.carbonPct()),
                figure(m.nitrogenPct()),
                figure(m.moisturePct()),
                figure(m.densityKgM3()),
                m.traits().stream().sorted().map(Trait::id).collect(Collectors.joining(", ")),
                m.note());
    }

    private String figure(Figure f) {
        return Doctrine.number(f.typical()) + " (" + Doctrine.number(f.low()) + "–" + Doctrine.number(f.high())
                + ")<br>" + Doctrine.source(f.source()) + ", " + doctrine.known(f.known());
    }

    private static String title(Group group) {
        String words = group.id().replace('-', ' ');
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
