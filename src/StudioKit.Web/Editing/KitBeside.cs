using System.Text.Json;
using StudioKit.Web.Storage;

namespace StudioKit.Web.Editing;

/// <summary>What lies beside a kit on this device and goes where it goes: the parts of its own that it names, and the states that were pinned of it.</summary>
/// <param name="Parts">Texts of its own parts, by <c>KIND/NAME</c>.</param>
/// <param name="Pins">Pinned states, oldest first.</param>
public sealed record KitBeside(IReadOnlyDictionary<string, string> Parts, IReadOnlyList<PinnedState> Pins)
{
    // As many as anybody looks at side by side; a text is no longer than any kit.
    private const int MostPins = 24;
    private const int MostCharacters = 1_000_000;

    /// <summary>Nothing.</summary>
    public static KitBeside Nothing { get; } = new(new Dictionary<string, string>(), []);

    /// <summary>Whether there is nothing.</summary>
    public bool IsNothing => Parts.Count == 0 && Pins.Count == 0;

    /// <summary>Reads what was kept; what is damaged of it is left out without a word, as a kit can be worked on without.</summary>
    /// <param name="kept">What was kept; empty where nothing was.</param>
    public static KitBeside Read(string kept)
    {
        try
        {
            return string.IsNullOrEmpty(kept) || JsonSerializer.Deserialize(kept, StorageJson.Default.KitBeside) is not { } read
                ? Nothing
                : new KitBeside(Sound(read.Parts), Sound(read.Pins));
        }
        catch (JsonException)
        {
            return Nothing;
        }
    }

    /// <summary>How it is kept; empty where there is nothing.</summary>
    public string Write() => IsNothing ? "" : JsonSerializer.Serialize(this, StorageJson.Default.KitBeside);

    /// <summary>With the parts of another: what is here already stays.</summary>
    /// <param name="parts">The parts.</param>
    public KitBeside With(IReadOnlyDictionary<string, string> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        return this with { Parts = parts.Concat(Parts).GroupBy(part => part.Key, StringComparer.Ordinal).ToDictionary(part => part.Key, part => part.Last().Value, StringComparer.Ordinal) };
    }

    /// <summary>Whether parts can lie beside these: none of them says something else of a part that is here.</summary>
    /// <param name="parts">The parts.</param>
    public bool Takes(IReadOnlyDictionary<string, string> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        return parts.All(part => !Parts.TryGetValue(part.Key, out var here) || here == part.Value);
    }

    private static Dictionary<string, string> Sound(IReadOnlyDictionary<string, string>? parts) =>
        (parts ?? Nothing.Parts).Where(part => part.Key.Count(letter => letter == '/') == 1 && part.Value is { Length: <= MostCharacters }).ToDictionary(part => part.Key, part => part.Value, StringComparer.Ordinal);

    private static IReadOnlyList<PinnedState> Sound(IReadOnlyList<PinnedState?>? pins) =>
        [.. (pins ?? []).Where(pin => pin is { Name.Length: > 0 and < 1000, Text.Length: > 0 and <= MostCharacters, Number: > 0 }).Select(pin => pin!).DistinctBy(pin => pin.Number).OrderBy(pin => pin.Number).TakeLast(MostPins)];
}
