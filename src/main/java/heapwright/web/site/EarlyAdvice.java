package heapwright.web.site;

import heapwright.journal.JournalFile;
import heapwright.journal.Listed;
import heapwright.journal.Noting;
import heapwright.journal.Stored;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Works out the piles of the folder before anybody asks, one after another, so that the first who looks need not wait
 * for the rules and the model to get going. What fails here fails again, and is told, when somebody asks.
 */
public final class EarlyAdvice implements Runnable {

    /** More piles than these are worked out when they are asked for: a long folder must not keep a machine busy. */
    static final int MOST = 60;

    private static final Logger LOG = LoggerFactory.getLogger(EarlyAdvice.class);

    private final Site site;

    public EarlyAdvice(Site site) {
        this.site = site;
    }

    @Override
    public void run() {
        try {
            List<Listed> listed = site.journal().list();
            for (Listed file : listed.subList(0, Math.min(MOST, listed.size()))) {
                workOut(file.id());
            }
        } catch (IOException | RuntimeException fault) {
            LOG.debug("Piles were not worked out ahead", fault);
        }
    }

    private void workOut(String id) throws IOException {
        Optional<JournalFile> file = site.journal().open(id);
        if (file.isPresent() && file.get() instanceof Stored stored) {
            site.desk().advise(Noting.advisedOn(stored.pile(), site.today()));
        }
    }
}
