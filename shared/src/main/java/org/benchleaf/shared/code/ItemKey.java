package org.benchleaf.shared.code;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.shared.Reading;

/// The permanent key of an item: its plant's key and a number, `K7QMN2X-3`.
///
/// @param plant the plant
/// @param number 1 to 999, counted up for each plant and never used again
public record ItemKey(PlantKey plant, int number) implements Comparable<ItemKey> {
    private static final Pattern WRITTEN = Pattern.compile("([0-9A-Za-z]{7})-(\\d{1,3})");

    public ItemKey {
        if (number < 1 || number > 999) {
            throw new IllegalArgumentException("item number must be 1 to 999; got " + number);
        }
    }

    public static Reading<ItemKey> read(String text) {
        Matcher matcher = WRITTEN.matcher(text.strip());
        if (!matcher.matches() || Integer.parseInt(matcher.group(2)) == 0) {
            return Reading.refused("key.unknown", text);
        }
        int number = Integer.parseInt(matcher.group(2));
        return PlantKey.read(matcher.group(1)).map(plant -> new ItemKey(plant, number));
    }

    @Override
    public int compareTo(ItemKey other) {
        int byPlant = plant.compareTo(other.plant);
        return byPlant != 0 ? byPlant : Integer.compare(number, other.number);
    }

    @Override
    public String toString() {
        return plant + "-" + number;
    }
}
