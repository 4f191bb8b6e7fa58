package slotledger.itest.workbench;

import java.util.HashSet;
import java.util.Set;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Control;

/** What is on the screen of a widget, as far as it is scrolled into sight. */
record Pixels(ImageData image) {

    /** Only on the window's thread. */
    static Pixels of(Control control) {
        control.update();
        GC gc = new GC(control);
        Rectangle sight = control.getBounds().intersection(control.getParent().getClientArea());
        Image image = new Image(control.getDisplay(), sight.width, sight.height);
        gc.copyArea(image, 0, 0);
        gc.dispose();
        ImageData data = image.getImageData();
        image.dispose();
        return new Pixels(data);
    }

    int colours() {
        Set<Integer> colours = new HashSet<>();
        for (int y = 0; y < image.height; y++) {
            for (int x = 0; x < image.width; x++) {
                colours.add(image.getPixel(x, y));
            }
        }
        return colours.size();
    }

    /** How many pixels are not of the colour at the upper left, which is the paper's. */
    long ink() {
        int paper = image.getPixel(1, 1);
        long ink = 0;
        for (int y = 0; y < image.height; y++) {
            for (int x = 0; x < image.width; x++) {
                ink += image.getPixel(x, y) == paper ? 0 : 1;
            }
        }
        return ink;
    }
}
