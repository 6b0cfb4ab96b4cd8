package heapwright.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.advice.WhatIf;
import heapwright.advice.winter.Trial;
import heapwright.pile.Pile;
import heapwright.process.heat.Bands;
import java.util.Locale;

/** Writes what steps would do as JSON. Temperatures in °C, always. */
public final class WhatIfJson {

    private static final double GRAIN = 100;

    private final Words words;
    private final WhatIfWords told;
    private final ModelJson model;
    private final String version;

    public WhatIfJson(Words words, String version) {
        this.words = words;
        this.told = new WhatIfWords(words);
        this.model = new ModelJson(words, version);
        this.version = version;
    }

    /** The document as text. */
    public String write(WhatIf whatIf) {
        Trial trial = whatIf.trial();
        Pile pile = trial.model().pile();
        ObjectNode root = JsonText.object("what-if");
        root.put("version", version);
        root.put("pile", pile.name());
        root.put("asOf", pile.asOf().toString());
        root.put("fits", trial.fits());
        ArrayNode choices = root.putArray("choices");
        for (WhatIf.Choice choice : whatIf.choices()) {
            ObjectNode one = choices.addObject();
            one.put("step", choice.option().remedy().id());
            one.put("summary", words.way(choice.option().remedy(), pile).name());
            choice.alternativeTo().ifPresent(r -> one.put("alternativeTo", r.id()));
            one.put("canTry", choice.canTry());
        }
        ArrayNode together = root.putArray("together");
        whatIf.together().forEach(r -> together.add(r.id()));
        ArrayNode left = root.putArray("left");
        for (WhatIf.Left one : whatIf.left()) {
            ObjectNode node = left.addObject();
            node.put("step", one.remedy().id());
            node.put("reason", one.reason().name().toLowerCase(Locale.ROOT).replace('_', '-'));
            one.other().ifPresent(r -> node.put("other", r.id()));
            node.put("text", told.left(one));
        }
        told.told(whatIf).forEach(root.putArray("text")::add);
        trial.with().ifPresent(w -> model.gain(root.putObject("gain"), w.gain(), pile.asOf()));
        ArrayNode days = root.putArray("days");
        for (int d = 0; d < trial.days(); d++) {
            ObjectNode day = days.addObject();
            day.put("date", trial.date(d).toString());
            band(day.putObject("withoutC"), trial.without(), d);
            int at = d;
            trial.with().ifPresent(w -> band(day.putObject("withC"), w.core(), at));
            band(day.putObject("outdoorC"), trial.outdoor(), d);
        }
        told.premises(whatIf).forEach(root.putArray("premises")::add);
        return JsonText.write(root);
    }

    private static void band(ObjectNode node, Bands bands, int day) {
        node.put("low", fine(bands.low()[day]))
                .put("likely", fine(bands.likely()[day]))
                .put("high", fine(bands.high()[day]));
    }

    private static double fine(double value) {
        return Math.round(value * GRAIN) / GRAIN + 0.0;
    }
}
