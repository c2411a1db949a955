package org.benchleaf.render.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class InOrderTest {
    private static Iterator<Integer> numbers(int count) {
        return IntStream.range(0, count).iterator();
    }

    private static InOrder<Integer, String> making(int count, Function<Integer, String> maker) {
        return new InOrder<>(numbers(count), () -> maker, 3);
    }

    @Test
    void givesAllOutInTheirOrderWhoeverMadeThem() {
        List<String> given = new ArrayList<>();
        try (InOrder<Integer, String> made = making(500, number -> {
            // the later of two neighbors is often done first
            for (int turn = 0; turn < number % 7 * 2000; turn++) {
                Thread.onSpinWait();
            }
            return "page " + number;
        })) {
            made.forEachRemaining(given::add);
        }
        assertThat(given)
                .isEqualTo(IntStream.range(0, 500)
                        .mapToObj(number -> "page " + number)
                        .toList());
    }

    @Test
    void whatGoesWrongWithOneIsThrownInItsPlaceAndTheRestGoesOn() {
        List<String> given = new ArrayList<>();
        try (InOrder<Integer, String> made = making(40, number -> {
            if (number % 10 == 3) {
                throw new IllegalArgumentException("page " + number);
            }
            return "page " + number;
        })) {
            while (made.hasNext()) {
                try {
                    given.add(made.next());
                } catch (IllegalArgumentException wrong) {
                    given.add("not " + wrong.getMessage());
                }
            }
        }
        assertThat(given).hasSize(40).contains("not page 3", "not page 13", "not page 33");
        assertThat(given.get(23)).isEqualTo("not page 23");
    }

    @Test
    void holdsNoMoreThanAFewAheadOfWhoTakesThem() throws InterruptedException {
        AtomicInteger made = new AtomicInteger();
        CountDownLatch many = new CountDownLatch(200);
        try (InOrder<Integer, String> ahead = making(10_000, number -> {
            made.incrementAndGet();
            many.countDown();
            return "";
        })) {
            for (int taken = 0; taken < 10; taken++) {
                ahead.next();
            }
            // nobody takes any more, so the makers wait
            assertThat(many.await(300, TimeUnit.MILLISECONDS)).isFalse();
            assertThat(made.get()).isLessThan(60);
        }
    }

    @Test
    void aFewAreMadeByTheThreadThatAsks() {
        List<Thread> makers = new ArrayList<>();
        try (InOrder<Integer, String> made = making(4, number -> {
            makers.add(Thread.currentThread());
            return "";
        })) {
            made.forEachRemaining(page -> {});
        }
        assertThat(makers).hasSize(4).containsOnly(Thread.currentThread());
    }

    @Test
    void afterTheLastThereIsNone() {
        try (InOrder<Integer, String> made = making(0, number -> "")) {
            assertThat(made.hasNext()).isFalse();
            assertThatThrownBy(made::next).isInstanceOf(NoSuchElementException.class);
        }
    }
}
