package slotledger.workbench.internal.app;

import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;
import slotledger.workbench.internal.Ids;

/** The order over the plan it comes from; at the right the machine a line is for. */
public final class OrderPerspective implements IPerspectiveFactory {

    private static final float LEFT = 0.64f;
    private static final float UPPER = 0.58f;

    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.setEditorAreaVisible(false);
        layout.setFixed(false);
        IFolderLayout order = layout.createFolder("left", IPageLayout.LEFT, LEFT, IPageLayout.ID_EDITOR_AREA);
        order.addView(Ids.ORDER);
        IFolderLayout plan = layout.createFolder("below", IPageLayout.BOTTOM, UPPER, "left");
        plan.addView(Ids.PLAN_PART);
        plan.addView(Ids.FINDINGS);
        plan.addPlaceholder("org.eclipse.ui.views.ProgressView");
        IFolderLayout machine = layout.createFolder("right", IPageLayout.RIGHT, LEFT, IPageLayout.ID_EDITOR_AREA);
        machine.addView(Ids.SLOTS);
        IFolderLayout why = layout.createFolder("reasons", IPageLayout.BOTTOM, UPPER, "right");
        why.addView(Ids.WHY);
    }
}
