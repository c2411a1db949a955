package org.benchleaf.app.web.staff;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;

/// Something that takes long to find out in a large catalog: found while pages are shown, and kept until what it rests
/// on has changed.
///
/// @param <T> what is found
final class Meanwhile<T> {
    /// A page waits so long for it and no longer.
    private static final long PATIENCE_MILLIS = 400;

    private static final Executor FINDER = Executors.newCachedThreadPool(
            Thread.ofPlatform().daemon().name("desk-", 0).factory());

    private final Supplier<Object> ground;
    private final Supplier<T> find;
    private Optional<Kept<T>> kept = Optional.empty();

    private record Kept<T>(Object ground, CompletableFuture<T> found) {}

    /// @param ground what it rests on; equal as long as nothing has changed
    Meanwhile(Supplier<Object> ground, Supplier<T> find) {
        this.ground = ground;
        this.find = find;
    }

    /// Empty while it is still being found.
    Optional<T> now() {
        try {
            return Optional.of(future().get(PATIENCE_MILLIS, TimeUnit.MILLISECONDS));
        } catch (TimeoutException still) {
            return Optional.empty();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        } catch (java.util.concurrent.ExecutionException failed) {
            throw new CompletionException(failed);
        }
    }

    private synchronized CompletableFuture<T> future() {
        Object now = ground.get();
        if (kept.isEmpty()
                || !kept.get().ground().equals(now)
                || kept.get().found().isCompletedExceptionally()) {
            kept = Optional.of(new Kept<>(now, CompletableFuture.supplyAsync(find, FINDER)));
        }
        return kept.get().found();
    }
}
