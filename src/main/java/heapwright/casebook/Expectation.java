package heapwright.casebook;

import heapwright.knowledge.Cause;
import heapwright.knowledge.Caution;
import heapwright.knowledge.Harm;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.Sign;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a case demands of the advice.
 *
 * @param causes causes that must stand among the first {@code within} findings
 * @param within how far down the findings those causes may stand
 * @param likely causes that must be at least likely, wherever they stand
 * @param notCauses causes that must not be likely
 * @param setAside causes that must be explained away
 * @param steps remedies that must be among the steps or their alternatives
 * @param firstStep the remedy that must come first
 * @param notSteps remedies that must not be offered
 * @param inOrder lists of remedies that must all be offered, each in an earlier step than the next
 * @param withheld remedies that must be held back with a reason
 * @param forbidden remedies that a guard itself must hold back, not only another step that they would undo or repeat
 * @param cautions cautions that must be given, with a step or always
 * @param notCautions cautions that must not be given
 * @param stepCautions cautions that must stand at a step itself, and the step must be offered
 * @param contradictions pairs of signs that must be named as contradictory
 * @param harms harm by work on the pile that must be told
 * @param audit what the audit of the recipe must be, where the case asks
 * @param why what the answer to why must be
 * @param ready what the answer to whether it is ready must be
 */
public record Expectation(
        List<Cause> causes,
        int within,
        List<Cause> likely,
        List<Cause> notCauses,
        List<Cause> setAside,
        List<Remedy> steps,
        Optional<Remedy> firstStep,
        List<Remedy> notSteps,
        List<List<Remedy>> inOrder,
        List<Remedy> withheld,
        List<Remedy> forbidden,
        List<Caution> cautions,
        List<Caution> notCautions,
        Map<Remedy, List<Caution>> stepCautions,
        List<List<Sign>> contradictions,
        List<Harm> harms,
        Optional<AuditExpectation> audit,
        Optional<WhyDemand> why,
        Optional<ReadyDemand> ready) {}
