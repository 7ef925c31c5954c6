using StudioKit.Physics;

namespace StudioKit.Planning.Session;

/// <summary>Letters that stand for the framings and the set-ups of a kit on a sheet written by hand.</summary>
/// <param name="Framings">Framings that are in reach, each with its letter, in the plan's order.</param>
/// <param name="SetUps">Set-ups, each with its letter, in the kit's order.</param>
public sealed record LetterKeys(ValueList<LetterKey> Framings, ValueList<LetterKey> SetUps)
{
    // I and O are read as one and nought.
    private const string Letters = "ABCDEFGHJKLMNPQRSTUVWXYZ";

    /// <summary>The letters of a plan: the same plan has the same.</summary>
    /// <param name="plan">The plan.</param>
    public static LetterKeys Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return new LetterKeys(
            Lettered(plan.Framings.Where(framing => framing.Reached).Select(framing => framing.Name)),
            Lettered(plan.Exposures.Select(exposure => exposure.SetUp).Distinct(StringComparer.Ordinal)));
    }

    private static ValueList<LetterKey> Lettered(IEnumerable<string> names) => [.. names.Select((name, i) => new LetterKey(Letter(i), name))];

    // A to Z, then AA, AB and so on.
    private static string Letter(int index) => index < Letters.Length
        ? Letters[index..(index + 1)]
        : Letter((index / Letters.Length) - 1) + Letters[index % Letters.Length];
}
