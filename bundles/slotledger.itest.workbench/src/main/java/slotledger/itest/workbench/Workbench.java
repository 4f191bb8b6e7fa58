package slotledger.itest.workbench;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.function.Supplier;
import org.eclipse.osgi.service.runnable.ApplicationLauncher;
import org.eclipse.osgi.service.runnable.ParameterizedRunnable;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;
import org.osgi.service.application.ApplicationDescriptor;

/** The running workbench, driven from the tests' thread. */
final class Workbench {

    private static final String APPLICATION = "slotledger.workbench.application";
    private static final long PATIENCE_MS = 60_000;
    private static final long NAP_MS = 50;

    private final CompletableFuture<Object> ended = new CompletableFuture<>();

    /** Starts the application as the product would, on a thread of its own. */
    static Workbench start(Path project) throws Exception {
        Workbench workbench = new Workbench();
        BundleContext context = FrameworkUtil.getBundle(Workbench.class).getBundleContext();
        context.registerService(ApplicationLauncher.class, workbench.new Launcher(), null);
        for (Bundle bundle : context.getBundles()) {
            if (bundle.getSymbolicName().equals("org.eclipse.equinox.app")) {
                bundle.start();
            }
        }
        ApplicationDescriptor application = context.getServiceReferences(ApplicationDescriptor.class,
                "(service.pid=" + APPLICATION + ")").stream().map(context::getService).findFirst().orElseThrow();
        Map<String, Object> arguments = new HashMap<>();
        arguments.put("application.args", new String[] {"=-project", "=" + project});
        application.launch(arguments);
        workbench.await("the window", () -> PlatformUI.isWorkbenchRunning()
                && workbench.on(() -> PlatformUI.getWorkbench().getActiveWorkbenchWindow() != null
                        || PlatformUI.getWorkbench().getWorkbenchWindowCount() > 0));
        return workbench;
    }

    /** Shows another of the places to work. */
    void perspective(String id) {
        on(() -> PlatformUI.getWorkbench().showPerspective(id, PlatformUI.getWorkbench().getWorkbenchWindows()[0]));
    }

    /** Runs something on the window's thread. */
    <T> T on(Callable<T> work) {
        CompletableFuture<T> result = new CompletableFuture<>();
        PlatformUI.getWorkbench().getDisplay().syncExec(() -> {
            try {
                result.complete(work.call());
            } catch (Exception e) {
                result.completeExceptionally(e);
            }
        });
        return result.join();
    }

    void await(String what, Supplier<Boolean> condition) throws Exception {
        for (long waited = 0; !condition.get(); waited += NAP_MS) {
            if (ended.isDone()) {
                throw new IllegalStateException("The workbench ended while waiting for %s: %s".formatted(what, end()));
            }
            if (waited > PATIENCE_MS) {
                throw new IllegalStateException("No sign of " + what + " within a minute.");
            }
            Thread.sleep(NAP_MS);
        }
    }

    /** The widget that carries the name; only on the window's thread. */
    <T extends Control> T widget(Class<T> type, String name) {
        return List.of(Display.getCurrent().getShells()).stream()
                .flatMap(shell -> find(shell, name).stream()).map(type::cast).findFirst()
                .orElseThrow(() -> new IllegalStateException("There is no widget %s.".formatted(name)));
    }

    void command(String id) {
        on(() -> PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(id, null));
    }

    /** Closes the window and waits for the application's exit code. */
    Object close() throws Exception {
        on(() -> PlatformUI.getWorkbench().close());
        return end();
    }

    private Object end() throws ExecutionException, InterruptedException {
        return ended.get();
    }

    private static Optional<Control> find(Control control, String name) {
        if (name.equals(control.getData("slotledger.widget"))) {
            return Optional.of(control);
        }
        return control instanceof Composite composite
                ? List.of(composite.getChildren()).stream().flatMap(child -> find(child, name).stream()).findFirst()
                : Optional.empty();
    }

    private final class Launcher implements ApplicationLauncher {

        @Override
        public void launch(ParameterizedRunnable application, Object context) {
            Thread thread = new Thread(() -> {
                try {
                    ended.complete(application.run(context));
                } catch (Exception e) {
                    ended.completeExceptionally(e);
                }
            }, "window");
            thread.setDaemon(true);
            thread.start();
        }

        @Override
        public void shutdown() {
            // The tests close the window.
        }
    }
}
