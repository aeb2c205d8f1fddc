package org.layshaft.engine.train;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.layshaft.engine.exact.Fraction;

/**
 * What a driveline can bring to the ground before a wheel slips: wheels with the torque that their grip allows, and
 * differentials that share torque between two sides, nested as they are in the vehicle. The same holds when the engine
 * brakes, with all torques the other way. Torques in N·m, without losses.
 */
public sealed interface Grip {

    /** The most torque that can be brought here. */
    Fraction mostNm();

    /**
     * The torque of each wheel, by its id, when this torque is brought here, or as much of it as can be: whatever is
     * more spins a wheel.
     */
    Map<String, Fraction> sharesNm(Fraction torqueNm);

    /** @param mostNm torque at which it slips, not below zero */
    record Wheel(String id, Fraction mostNm) implements Grip {
        public Wheel {
            if (mostNm.signum() < 0) {
                throw new IllegalArgumentException(
                        "The grip of %s is %s N·m; it cannot be below zero.".formatted(id, mostNm));
            }
        }

        @Override
        public Map<String, Fraction> sharesNm(Fraction torqueNm) {
            return Map.of(id, least(torqueNm, mostNm));
        }
    }

    /**
     * @param share what the first side gets for each 1 of the second while nothing slips: 1 for a bevel differential
     * @param lock what keeps the sides from turning apart
     */
    record Differential(Grip first, Grip second, Fraction share, Lock lock) implements Grip {
        public Differential {
            if (share.signum() <= 0) {
                throw new IllegalArgumentException("The share is %s; it must be above zero.".formatted(share));
            }
        }

        /** A bevel differential: both sides alike. */
        public Differential(Grip first, Grip second, Lock lock) {
            this(first, second, Fraction.ONE, lock);
        }

        @Override
        public Fraction mostNm() {
            return mostOfFirst().plus(mostOfSecond());
        }

        /** Shares as an open one does until one side can take no more; the other then goes on as far as the lock lets it. */
        @Override
        public Map<String, Fraction> sharesNm(Fraction torqueNm) {
            Fraction torque = least(torqueNm, mostNm());
            Fraction ofFirst = torque.times(share).over(share.plus(Fraction.ONE));
            if (ofFirst.compareTo(mostOfFirst()) > 0) {
                ofFirst = mostOfFirst();
            } else if (torque.minus(ofFirst).compareTo(mostOfSecond()) > 0) {
                ofFirst = torque.minus(mostOfSecond());
            }
            Map<String, Fraction> shares = new LinkedHashMap<>(first.sharesNm(ofFirst));
            shares.putAll(second.sharesNm(torque.minus(ofFirst)));
            return Collections.unmodifiableMap(shares);
        }

        private Fraction mostOfFirst() {
            return lock.most(second.mostNm().times(share))
                    .map(most -> least(most, first.mostNm()))
                    .orElse(first.mostNm());
        }

        private Fraction mostOfSecond() {
            return lock.most(first.mostNm().over(share))
                    .map(most -> least(most, second.mostNm()))
                    .orElse(second.mostNm());
        }
    }

    /** What keeps the two sides of a differential from turning apart. */
    sealed interface Lock {

        /**
         * The most that the side that still grips can get.
         *
         * @param openNm what an open differential would give it, the other side slipping
         * @return empty where only its own grip limits it
         */
        Optional<Fraction> most(Fraction openNm);
    }

    /** Nothing does. */
    record Open() implements Lock {
        @Override
        public Optional<Fraction> most(Fraction openNm) {
            return Optional.of(openNm);
        }
    }

    /** They are tied. */
    record Locked() implements Lock {
        @Override
        public Optional<Fraction> most(Fraction openNm) {
            return Optional.empty();
        }
    }

    /**
     * Friction does. Where both are stated, the greater of the two holds, so that no more is promised than either allows.
     *
     * @param preloadNm torque that its clutches hold between the sides, whatever drives: so much more goes to the side
     *     that grips
     * @param biasRatio the most that the side that grips gets for each 1 that it would get from an open one; at least 1
     */
    record LimitedSlip(Optional<Fraction> preloadNm, Optional<Fraction> biasRatio) implements Lock {
        @Override
        public Optional<Fraction> most(Fraction openNm) {
            Fraction byPreload = openNm.plus(preloadNm.orElse(Fraction.ZERO));
            Fraction byBias = openNm.times(biasRatio.orElse(Fraction.ONE));
            return Optional.of(byPreload.compareTo(byBias) > 0 ? byPreload : byBias);
        }
    }

    private static Fraction least(Fraction one, Fraction other) {
        return one.compareTo(other) < 0 ? one : other;
    }
}
