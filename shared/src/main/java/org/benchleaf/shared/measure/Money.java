package org.benchleaf.shared.measure;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.shared.Reading;

/// An amount of money in the smallest unit of its currency.
///
/// @param minor cents (or what the currency has), 0 or more
/// @param currency ISO 4217
public record Money(long minor, Currency currency) implements Comparable<Money> {
    private static final Pattern WRITTEN =
            Pattern.compile("(?:([A-Z]{3})\\s*)?[$€£]?\\s*(\\d{1,9}(?:\\.\\d{1,2})?)(?:\\s*([A-Z]{3}))?");

    public Money {
        if (minor < 0) {
            throw new IllegalArgumentException("a price must be 0 or more; got " + minor);
        }
    }

    public static Money usDollars(String amount) {
        return read(amount, Currency.getInstance("USD")).orThrow();
    }

    /// Reads `21.50`, `$21.50`, `1,250.00` or `21.50 CAD`; the shop's currency stands in where none is written.
    public static Reading<Money> read(String text, Currency usual) {
        Matcher matcher = WRITTEN.matcher(text.strip().replaceAll(",(?=\\d{3}(\\D|$))", ""));
        if (!matcher.matches()) {
            return Reading.refused("money.unknown", text);
        }
        String code = matcher.group(1) != null ? matcher.group(1) : matcher.group(3);
        try {
            Currency currency = code == null ? usual : Currency.getInstance(code);
            BigDecimal minor = new BigDecimal(matcher.group(2)).movePointRight(currency.getDefaultFractionDigits());
            return Reading.of(new Money(minor.longValueExact(), currency));
        } catch (IllegalArgumentException | ArithmeticException notMoney) {
            return Reading.refused("money.unknown", text);
        }
    }

    @Override
    public int compareTo(Money other) {
        if (!currency.equals(other.currency)) {
            throw new IllegalArgumentException("cannot compare " + this + " with " + other);
        }
        return Long.compare(minor, other.minor);
    }

    /// The bare amount: `21.50`.
    public String amount() {
        return BigDecimal.valueOf(minor, currency.getDefaultFractionDigits()).toPlainString();
    }

    /// `21.50 USD`, the form in which it is stored.
    @Override
    public String toString() {
        return amount() + " " + currency.getCurrencyCode();
    }
}
