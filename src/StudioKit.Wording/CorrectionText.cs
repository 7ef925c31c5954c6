using System.Globalization;
using StudioKit.Kits;

namespace StudioKit.Wording;

/// <summary>Measured corrections in words.</summary>
public static class CorrectionText
{
    /// <summary>Before, after and how sure.</summary>
    /// <param name="value">A corrected figure.</param>
    public static string Value(MeasuredCorrection value)
    {
        ArgumentNullException.ThrowIfNull(value);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{value.Before:0.##} -> {value.After:0.##} {value.Unit} ({Rounded.WithSign(value.Correction.Value, 2)} ± {value.PlusMinus.Value:0.00} stop)").Replace("  ", " ", StringComparison.Ordinal);
    }
}
