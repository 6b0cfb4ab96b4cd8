package heapwright.advice.engine;

import heapwright.knowledge.Id;
import heapwright.knowledge.Known;
import heapwright.knowledge.Strength;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.definition.rule.Rule;
import org.kie.api.runtime.KieSession;

/**
 * The compiled rules. They were compiled when the program was built; loading their classes directly spares the scan of
 * the class path and the compiler at start.
 */
public final class Rulebook {

    private static final String MODEL_LIST = "/META-INF/kie/heapwright/heapwright/drools-model";
    private static final String VERSION_LINE = "Drools-Model-Version";

    private static final String PACKAGE = "heapwright.rules.";

    private final Set<Pass> passes;
    private final KieBase base;
    private final Map<String, RuleInfo> byName;
    private final Optional<String> dropped;

    private Rulebook(Set<Pass> passes, KieBase base, Map<String, RuleInfo> byName, Optional<String> dropped) {
        this.passes = EnumSet.copyOf(passes);
        this.base = base;
        this.byName = byName;
        this.dropped = dropped;
    }

    /**
     * Loads all the rules packed with the program.
     *
     * @throws IllegalStateException when there are none or one lacks what every rule must carry: our own failure
     */
    public static Rulebook packed() {
        return packed(EnumSet.allOf(Pass.class));
    }

    /**
     * Loads the rules of some passes: a command that needs few starts sooner with few.
     *
     * @param passes at least one
     * @throws IllegalStateException as for all of them
     */
    public static Rulebook packed(Set<Pass> passes) {
        // Making the models is mostly loading their thousands of classes, and each stands alone.
        List<Model> models = modelClasses().parallelStream()
                .filter(name -> passes.stream().anyMatch(p -> name.startsWith(PACKAGE + p.id() + ".")))
                .map(Rulebook::model)
                .toList();
        KieBase base = KieBaseBuilder.createKieBaseFromModel(models);
        Map<String, RuleInfo> infos = new TreeMap<>();
        base.getKiePackages().stream().flatMap(p -> p.getRules().stream()).forEach(rule -> {
            RuleInfo info = info(rule);
            if (infos.put(key(rule), info) != null) {
                throw new IllegalStateException("Two rules are named \"" + rule.getName() + "\"");
            }
        });
        if (infos.isEmpty()) {
            throw new IllegalStateException(
                    "The knowledge base is empty: the rules were not compiled into the program");
        }
        return new Rulebook(passes, base, infos, Optional.empty());
    }

    /** Every rule, in order of id. */
    public List<RuleInfo> rules() {
        return byName.values().stream()
                .sorted((a, b) -> a.id().compareTo(b.id()))
                .toList();
    }

    /**
     * The same rules but one, which then never fires: it shows what that rule is needed for.
     *
     * @param id the id of a rule
     * @throws IllegalArgumentException when there is no such rule
     */
    public Rulebook without(String id) {
        if (byName.values().stream().noneMatch(r -> r.id().equals(id))) {
            throw new IllegalArgumentException("There is no rule \"" + id + "\" to leave out");
        }
        return new Rulebook(passes, base, byName, Optional.of(id));
    }

    /** Whether a rule may fire. */
    boolean allows(Rule rule) {
        return dropped.isEmpty() || !of(rule).id().equals(dropped.get());
    }

    RuleInfo of(Rule rule) {
        return byName.get(key(rule));
    }

    /** @throws IllegalStateException when the pass was not loaded: our own failure */
    void demand(Pass pass) {
        if (!passes.contains(pass)) {
            throw new IllegalStateException("The " + pass.id() + " rules were not loaded, only those of " + passes);
        }
    }

    KieSession open() {
        return base.newKieSession();
    }

    private static String key(Rule rule) {
        return rule.getPackageName() + "/" + rule.getName();
    }

    private static List<String> modelClasses() {
        try (InputStream in = Rulebook.class.getResourceAsStream(MODEL_LIST)) {
            if (in == null) {
                throw new IllegalStateException("The knowledge base is missing: " + MODEL_LIST + " is not packed");
            }
            List<String> names = new ArrayList<>();
            BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                if (!line.isBlank() && !line.startsWith(VERSION_LINE)) {
                    names.add(line.strip());
                }
            }
            return names;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Model model(String className) {
        try {
            return (Model) Class.forName(className).getDeclaredConstructor().newInstance();
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("The compiled rules " + className + " cannot be loaded", e);
        }
    }

    private static RuleInfo info(Rule rule) {
        String packageName = rule.getPackageName();
        String pass = packageName.substring(packageName.lastIndexOf('.') + 1);
        return new RuleInfo(
                meta(rule, "id"),
                rule.getName(),
                byId(Pass.values(), pass, rule),
                byId(Strength.values(), meta(rule, "strength"), rule),
                byId(Known.values(), meta(rule, "evidence"), rule),
                meta(rule, "source"),
                meta(rule, "rationale"));
    }

    private static String meta(Rule rule, String name) {
        Object value = rule.getMetaData().get(name);
        if (value == null) {
            throw new IllegalStateException("Rule \"" + rule.getName() + "\" carries no @" + name);
        }
        return value.toString().strip();
    }

    private static <T extends Id> T byId(T[] values, String id, Rule rule) {
        return Arrays.stream(values)
                .filter(v -> v.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(
                        "Rule \"" + rule.getName() + "\": \"" + id + "\" is not one of " + Arrays.toString(values)));
    }
}
