package etamine.ordering.internal;

import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.kitchen.house.Kitchen;
import etamine.ordering.OrderDesk;
import etamine.ordering.OrderPlan;
import etamine.ordering.PlanTerms;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** {@code plan}: what to order, from whom, for which delivery, and why. Writes nothing. */
@Component
public final class PlanVerb implements Verb {
    private final OrderDesk desk;
    private final Kitchen kitchen;
    private final Neighbours neighbours;

    /** The verb of the open book. */
    @Activate
    public PlanVerb(@Reference OrderDesk desk, @Reference Kitchen kitchen, @Reference Neighbours neighbours) {
        this.desk = desk;
        this.kitchen = kitchen;
        this.neighbours = neighbours;
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("plan", "what to order from whom for which delivery, with the reasons")
                .with("--from", "DATE", "first day; today when not given")
                .with("--days", "N", "how many days; 7 when not given")
                .with("--method", "par|best", "par: as a cook does by hand");
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        String method = call.option("--method").orElse("par");
        if (method.equals("best")) {
            throw VerbException.wrongCall("A later version brings the method best; use --method par.");
        }
        if (!method.equals("par")) {
            throw VerbException.wrongCall("There is no method “" + method + "”; use --method par.");
        }
        PlanTerms terms = Values.terms(call, kitchen);
        OrderPlan plan = desk.plan(terms, call.progress());
        return new PlanReport(plan, neighbours, kitchen.house().measures()).report();
    }
}
