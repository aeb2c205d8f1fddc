package org.layshaft.engine.whatif;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.layshaft.engine.rules.fact.Drive;
import org.layshaft.engine.rules.fact.Fact;
import org.layshaft.engine.rules.fact.Verdicts;
import org.layshaft.kb.layout.HalfShaft;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Shaft;

/** What one sound gear takes its drive through: connections, and stretches of shafts. */
final class Needs {
    private final Layout layout;
    private final String gear;
    private final List<List<Drive.Driven>> chains;

    /**
     * @param at the name under which the run selected this gear
     */
    Needs(Layout layout, Run run, String gear, String at) {
        this.layout = layout;
        this.gear = gear;
        this.chains =
                run.outputs().stream().map(output -> run.chain(at, output)).toList();
    }

    List<Fact> all() {
        Set<Fact> needs = new LinkedHashSet<>();
        for (List<Drive.Driven> chain : chains) {
            for (int i = 0; i < chain.size(); i++) {
                Drive.Driven link = chain.get(i);
                if (isWithinTheBox(link)) {
                    needs.add(new Verdicts.Needs(gear, link.connection()));
                }
                needs.addAll(stretch(chain, i));
            }
        }
        return List.copyOf(needs);
    }

    /** Half-shafts are the differential's business: what their loss means is said by a rule of its own. */
    private boolean isWithinTheBox(Drive.Driven link) {
        return !link.connection().isEmpty()
                && layout.find(HalfShaft.class, link.driver()).isEmpty();
    }

    private List<Fact> stretch(List<Drive.Driven> chain, int index) {
        String body = chain.get(index).body();
        return layout.find(Shaft.class, body)
                .map(shaft -> {
                    List<String> along = shaft.along();
                    // The clutch drives a shaft at its front end; an output shaft gives its drive at its rear end.
                    int from =
                            index == 0 ? -1 : along.indexOf(chain.get(index - 1).body());
                    int to = index + 1 == chain.size()
                            ? along.size()
                            : along.indexOf(chain.get(index + 1).body());
                    return List.<Fact>of(new Verdicts.NeedsStretch(gear, body, Math.min(from, to), Math.max(from, to)));
                })
                .orElse(List.of());
    }
}
