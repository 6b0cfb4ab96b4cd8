package heapwright.cli;

import heapwright.casebook.Case;
import heapwright.casebook.CaseFault;
import heapwright.casebook.Casebook;
import heapwright.knowledge.Knowledge;
import java.nio.file.Path;
import java.util.List;

/** Cases that a command names by their folder. */
final class CaseFiles {

    private CaseFiles() {}

    /**
     * Every case below a folder.
     *
     * @throws UsageFault when there is no such folder or a case cannot be read
     */
    static List<Case> all(Knowledge knowledge, Path folder) {
        try {
            return new Casebook(knowledge).below(Folders.there(folder, "--cases cases"));
        } catch (CaseFault fault) {
            throw new UsageFault(fault.getMessage());
        }
    }

    /**
     * The same without those because of which nothing is ever changed.
     *
     * @throws UsageFault also when none is left
     */
    static List<Case> open(Knowledge knowledge, Path folder) {
        List<Case> cases = Casebook.open(all(knowledge, folder), folder);
        if (cases.isEmpty()) {
            throw new UsageFault(
                    "heapwright: \"" + folder + "\" has no cases to work with; nothing is ever changed because of"
                            + " those in unfitted. Example: --cases cases/practice");
        }
        return cases;
    }
}
