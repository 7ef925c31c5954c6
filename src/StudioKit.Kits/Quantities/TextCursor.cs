using System.Globalization;

namespace StudioKit.Kits.Quantities;

/// <summary>Walks along a text and picks numbers and words off it.</summary>
internal struct TextCursor(string text)
{
    private const string VulgarFractions = "½⅓⅔¼¾⅛⅜⅝⅞";
    private static readonly double[] VulgarValues = [0.5, 1.0 / 3, 2.0 / 3, 0.25, 0.75, 0.125, 0.375, 0.625, 0.875];

    public string Text { get; } = text;

    public int Position { get; set; }

    public readonly bool AtEnd => Position >= Text.Length;

    public readonly char Current => Position < Text.Length ? Text[Position] : '\0';

    public readonly string Rest => Position < Text.Length ? Text[Position..] : "";

    public void SkipSpaces()
    {
        while (Current is ' ' or '\u00A0' or '\u2009')
        {
            Position++;
        }
    }

    /// <summary>Reads what stands next, if it is exactly this.</summary>
    public bool Take(string expected, StringComparison comparison = StringComparison.Ordinal)
    {
        if (string.Compare(Text, Position, expected, 0, expected.Length, comparison) != 0)
        {
            return false;
        }

        Position += expected.Length;
        return true;
    }

    /// <summary>Reads a number with sign, decimal point, fraction (3/4), mixed fraction (1 1/2) or exponent (5e-5).</summary>
    public bool TryNumber(out double number)
    {
        var start = Position;
        var sign = TakeSign();
        if (!TryUnsigned(out number))
        {
            Position = start;
            return false;
        }

        number *= sign;
        return true;
    }

    private double TakeSign()
    {
        if (Current is '+')
        {
            Position++;
        }
        else if (Current is '-' or '−')
        {
            Position++;
            SkipSpaces();
            return -1;
        }

        SkipSpaces();
        return 1;
    }

    private bool TryUnsigned(out double number)
    {
        if (TryVulgar(out number))
        {
            return true;
        }

        if (!TryDecimal(out number, out var whole))
        {
            return false;
        }

        if (TryVulgar(out var part))
        {
            number += part;
        }
        else if (TryDenominator(out var denominator))
        {
            number /= denominator;
        }
        else if (whole && TryFollowingFraction(out var fraction))
        {
            number += fraction;
        }

        return true;
    }

    private bool TryVulgar(out double value)
    {
        var index = AtEnd ? -1 : VulgarFractions.IndexOf(Current, StringComparison.Ordinal);
        value = index < 0 ? 0 : VulgarValues[index];
        Position += index < 0 ? 0 : 1;
        return index >= 0;
    }

    private bool TryDecimal(out double number, out bool whole)
    {
        var start = Position;
        SkipDigits();
        whole = Current != '.';
        if (!whole)
        {
            Position++;
            SkipDigits();
        }

        TakeExponent();
        return double.TryParse(Text.AsSpan(start, Position - start), NumberStyles.Float, CultureInfo.InvariantCulture, out number);
    }

    private void SkipDigits()
    {
        while (char.IsAsciiDigit(Current))
        {
            Position++;
        }
    }

    private void TakeExponent()
    {
        var start = Position;
        if (Current is not ('e' or 'E'))
        {
            return;
        }

        Position++;
        if (Current is '+' or '-')
        {
            Position++;
        }

        var digits = Position;
        SkipDigits();
        Position = Position == digits ? start : Position;
    }

    private bool TryDenominator(out double denominator)
    {
        var start = Position;
        denominator = 0;
        if (Current == '/')
        {
            Position++;
            if (TryDecimal(out denominator, out _) && denominator > 0)
            {
                return true;
            }
        }

        Position = start;
        return false;
    }

    private bool TryFollowingFraction(out double fraction)
    {
        var start = Position;
        SkipSpaces();
        fraction = 0;
        if (Position > start && (TryVulgar(out fraction) || (TryDecimal(out fraction, out var whole) && whole && Divide(ref fraction))))
        {
            return true;
        }

        Position = start;
        fraction = 0;
        return false;
    }

    private bool Divide(ref double numerator)
    {
        if (!TryDenominator(out var denominator))
        {
            return false;
        }

        numerator /= denominator;
        return true;
    }
}
