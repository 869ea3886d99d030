package etamine.diary.ui.internal;

import etamine.diary.ServiceDiary;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.item.Items;
import etamine.kitchen.recipe.Recipes;
import etamine.kitchen.use.ExpectedUse;
import etamine.shell.Bench;
import etamine.shell.Frame;
import etamine.shell.Station;
import java.util.Optional;
import java.util.Set;
import org.eclipse.swt.widgets.Composite;
import org.jspecify.annotations.Nullable;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** Where covers, menu mix and sales are kept. */
@Component
public final class DiaryStation implements Station {
    private static final int ORDER = 600;

    private final ServiceDiary diary;
    private final Kitchen kitchen;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile @Nullable Recipes recipes;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile @Nullable Items items;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile @Nullable ExpectedUse expectedUse;

    /** The station of the open diary. */
    @Activate
    public DiaryStation(@Reference ServiceDiary diary, @Reference Kitchen kitchen) {
        this.diary = diary;
        this.kitchen = kitchen;
    }

    @Override
    public String id() {
        return "diary";
    }

    @Override
    public String name() {
        return "Covers";
    }

    @Override
    public String icon() {
        return "covers";
    }

    @Override
    public int order() {
        return ORDER;
    }

    @Override
    public Set<String> shows() {
        return Set.of("covers");
    }

    @Override
    public Bench open(Composite parent, Frame frame) {
        KitchenNames names = new KitchenNames(
                () -> Optional.ofNullable(recipes),
                () -> Optional.ofNullable(items),
                () -> Optional.ofNullable(expectedUse));
        return new DiaryBench(parent, frame, new DiaryModel(diary, kitchen, names), names);
    }
}
