package org.benchleaf.render.pdf;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Objects;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/// Makes one thing of each of many, ahead of whoever takes them and by several threads, and gives them out in their
/// order; no more than a few are held. What goes wrong with one is thrown to who takes it, and the rest goes on.
///
/// @param <T> what there is, taken by one thread at a time
/// @param <R> what is made of it
public final class InOrder<T, R> implements Iterator<R>, AutoCloseable {
    /// So many are made by the thread that asks; most prints have no more, and start no thread.
    private static final int ALONE = 4;

    private static final int AHEAD = 32;

    private final Iterator<T> source;
    private final Supplier<Function<T, R>> makers;
    private final Function<T, R> own;
    private final int threads;
    private final BlockingQueue<CompletableFuture<Step<R>>> queue = new ArrayBlockingQueue<>(AHEAD);
    private final List<Thread> started = new ArrayList<>();
    private final Object turn = new Object();
    private @Nullable Step<R> next;
    private boolean ended;
    private int given;

    private sealed interface Step<R> {
        record Made<R>(R thing) implements Step<R> {}

        record Failed<R>(Throwable failure) implements Step<R> {}

        record Done<R>() implements Step<R> {}
    }

    /// @param makers one for each thread
    /// @param threads at least one
    public InOrder(Iterator<T> source, Supplier<Function<T, R>> makers, int threads) {
        this.source = source;
        this.makers = makers;
        this.own = makers.get();
        this.threads = threads;
    }

    /// As many as the machine runs at once, at most three: more would wait for the one that writes.
    public static int usualThreads() {
        return Math.clamp(Runtime.getRuntime().availableProcessors(), 1, 3);
    }

    @Override
    public boolean hasNext() {
        if (next == null) {
            next = step();
        }
        return !(next instanceof Step.Done<R>);
    }

    @Override
    public R next() {
        if (!hasNext()) {
            throw new NoSuchElementException();
        }
        Step<R> step = Objects.requireNonNull(next);
        next = null;
        return switch (step) {
            case Step.Made<R>(R thing) -> thing;
            case Step.Failed<R>(RuntimeException failure) -> throw failure;
            case Step.Failed<R>(Error failure) -> throw failure;
            case Step.Failed<R>(Throwable failure) -> throw new IllegalStateException(failure);
            case Step.Done<R> done -> throw new NoSuchElementException();
        };
    }

    private Step<R> step() {
        if (given++ < ALONE) {
            return take(own).get();
        }
        if (started.isEmpty()) {
            for (int thread = 0; thread < threads; thread++) {
                started.add(Thread.ofPlatform().daemon().name("pages-" + thread).start(this::makeAll));
            }
        }
        try {
            return queue.take().join();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the print was stopped", stopped);
        }
    }

    private void makeAll() {
        Function<T, R> maker = makers.get();
        try {
            while (true) {
                CompletableFuture<Step<R>> place = new CompletableFuture<>();
                Supplier<Step<R>> work;
                synchronized (turn) {
                    if (ended) {
                        return;
                    }
                    work = take(maker);
                    queue.put(place);
                }
                place.complete(work.get());
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    /// Takes the next; what is to be made of it need not be made in turn.
    private Supplier<Step<R>> take(Function<T, R> maker) {
        try {
            if (!source.hasNext()) {
                ended = true;
                return Step.Done::new;
            }
            T thing = source.next();
            return () -> make(maker, thing);
        } catch (RuntimeException | Error failure) {
            return () -> new Step.Failed<>(failure);
        }
    }

    private Step<R> make(Function<T, R> maker, T thing) {
        try {
            return new Step.Made<>(maker.apply(thing));
        } catch (RuntimeException | Error failure) {
            return new Step.Failed<>(failure);
        }
    }

    /// Whoever still makes something stops after it.
    @Override
    public void close() {
        started.forEach(Thread::interrupt);
    }
}
