using StudioKit.Kits.Quantities;

namespace StudioKit.Kits.Description;

/// <summary>Smallest and largest value allowed, as a person would write them; either may be open.</summary>
internal sealed record ValueBounds(string? Least, string? Most)
{
    // Bounds and values go through the same conversions, but 1e-9 forgives the last bit of a fraction.
    private const double Slack = 1e-9;

    /// <summary>Whether a value lies within the bounds.</summary>
    public bool Hold<T>(ValueKind<T> kind, T value)
    {
        if (kind.Measure is null || kind.ReadMeasure is null)
        {
            return true;
        }

        var (least, most) = kind.Measure(value);
        return (Least is null || least >= Number(kind, Least) - (Slack * Math.Abs(least))) && (Most is null || most <= Number(kind, Most) + (Slack * Math.Abs(most)));
    }

    /// <summary>From the smallest to the largest value allowed, in the unit table's units; without end where either is open.</summary>
    public double Range(ValueKind kind) => Least is null || Most is null ? double.PositiveInfinity : Number(kind, Most) - Number(kind, Least);

    public override string ToString() => (Least, Most) switch
    {
        ({ } least, { } most) => $"{least} to {most}",
        ({ } least, null) => $"{least} or more",
        (null, { } most) => $"up to {most}",
        _ => "any",
    };

    private static double Number(ValueKind kind, string bound) => kind.ReadMeasure!(bound) is { IsGood: true } reading
        ? reading.Value
        : throw new InvalidOperationException($"The description of a key has a bound that cannot be read: {bound}");
}
