namespace StudioKit.Kits.Forms;

/// <summary>Keys and words of the kit in plain words: their hyphens as blanks, and what that would not say well written out.</summary>
internal static class FieldLabels
{
    private static readonly Dictionary<string, string> WrittenOut = new(StringComparer.Ordinal)
    {
        ["kit"] = "Name of the kit",
        ["part"] = "Part from the library",
        ["iso"] = "ISO speed",
        ["flash-sync"] = "Flash sync speed",
        ["reports-effective-f-number"] = "Shows the effective f-number",
        ["flange-distance"] = "Mount to sensor",
        ["closest-focus"] = "Closest focus, to the sensor",
        ["largest-magnification"] = "Largest magnification of its own",
        ["close-up-lens"] = "Close-up lens",
        ["close-up-lenses"] = "Close-up lenses",
        ["head"] = "Bright window",
        ["body"] = "Body, lying on its back",
        ["full-power-duration"] = "Flash duration at full power",
        ["flashes-per-set"] = "Flashes from a set of cells",
        ["cell-count"] = "Cells in a set",
        ["spare-sets"] = "Spare sets of cells",
        ["cell"] = "Cell",
        ["lobe-exponent"] = "Exponent of its lobe",
        ["scatter-exponent"] = "Exponent of the scatter lobe",
        ["margin"] = "Sheet beyond the field",
        ["skirt-areal-mass"] = "Skirt mass per area",
        ["making"] = "How the sheet was made",
        ["subject-in-box"] = "Heaviest subject in its box",
        ["youngs-modulus"] = "Young's modulus",
        ["poisson-ratio"] = "Poisson's ratio",
        ["softens-like-pvc"] = "Softens like PVC",
        ["take-off"] = "Take-off",
        ["cradle-stand-off"] = "Cradle stand-off",
        ["guys"] = "Guys from the top corners",
        ["wet"] = "Wet skin",
        ["stack"] = "Focus stack too",
        ["set-up"] = "Set-up",
        ["set-ups"] = "Set-ups",
        ["active"] = "When it is about",
        ["downhill"] = "Which way the ground falls",
        ["utc-offset"] = "Clocks ahead of Universal Time",
        ["clock"] = "Hours of the day",
        ["ambient"] = "Ambient light",
        ["ambient-below-flash"] = "Daylight below the flash",
        ["ambient-under"] = "Background below its metered exposure",
        ["veil-limit"] = "Most veil accepted",
        ["offset-right"] = "Offset to the right",
        ["offset-back"] = "Offset to the back",
        ["aim-right"] = "Aim to the right",
        ["aim-back"] = "Aim to the back",
        ["inside"] = "Inside length, width and depth",
        ["highest-share"] = "Highest share of body mass",
        ["studios"] = "Studios built at once",
        ["swept-table"] = "Swept table",
        ["yes"] = "Yes",
        ["no"] = "No",
    };

    /// <summary>A key or word in plain words.</summary>
    public static string Of(string word) => WrittenOut.TryGetValue(word, out var label) ? label
        : word.Length == 0 ? "" : char.ToUpperInvariant(word[0]) + word[1..].Replace('-', ' ');
}
