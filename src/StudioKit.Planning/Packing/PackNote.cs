using StudioKit.Physics.Packing;
using UnitsNet;

namespace StudioKit.Planning.Packing;

/// <summary>A note on a pack, put into words when it is read.</summary>
/// <param name="Kind">What it is about.</param>
/// <param name="Text">The sentence; empty of all other kinds.</param>
public sealed record PackNote(PackNoteKind Kind, string Text)
{
    // Cabin bag that a trade body advises, wheels and handles included; from memory, carriers differ.
    internal static BoxSize CabinBag { get; } = new(Length.FromMillimeters(560), Length.FromMillimeters(450), Length.FromMillimeters(250));

    private static readonly Mass UsualBody = Mass.FromKilograms(70);

    /// <summary>Things that it names.</summary>
    public IReadOnlyList<PackedItem> Items { get; init; } = [];

    /// <summary>Bags that it names.</summary>
    public IReadOnlyList<string> Bags { get; init; } = [];

    /// <summary>The words.</summary>
    public string Words => Kind switch
    {
        PackNoteKind.Weigh => $"Weigh these, their mass is assumed: {string.Join(", ", Items.Select(item => item.Words))}.",
        PackNoteKind.Outside => $"Strapped outside, in a sleeve: {string.Join("; ", Items.Select(item => $"{item.Words} on {item.Bag}"))}.",
        PackNoteKind.NoBodyMass => $"A bag without a carrier of known body mass counts as carried by somebody of {MeasureFormat.WholeKilograms(UsualBody)}.",
        PackNoteKind.LargeBags => $"Larger than a usual cabin bag of {DistanceFormat.CentimetreBox(CabinBag.Longest, CabinBag.Middle, CabinBag.Shortest)} (from memory): {string.Join(", ", Bags)}.",
        _ => Text,
    };
}
