namespace StudioKit.Kits;

/// <summary>Every code that a diagnostic may carry, in one place.</summary>
public static class DiagnosticCodes
{
    /// <summary>A value cannot be read: unit missing, unknown or of another quantity, or a malformed number, name or choice.</summary>
    public const string UnreadableValue = "KIT001";

    /// <summary>A value lies outside the range that its key allows.</summary>
    public const string OutOfRange = "KIT002";

    /// <summary>A key that this section does not know.</summary>
    public const string UnknownKey = "KIT003";

    /// <summary>A key stands twice in one section.</summary>
    public const string DuplicateKey = "KIT004";

    /// <summary>A key that must be there is missing.</summary>
    public const string MissingKey = "KIT005";

    /// <summary>A list, a section or a single value stands where another of the three is needed.</summary>
    public const string WrongShape = "KIT006";

    /// <summary>A name refers to nothing in the kit.</summary>
    public const string UnknownName = "KIT007";

    /// <summary>Two things of one kind bear the same name.</summary>
    public const string DuplicateName = "KIT008";

    /// <summary>Values contradict each other.</summary>
    public const string Contradiction = "KIT009";

    /// <summary>The file is no well-formed YAML.</summary>
    public const string Syntax = "KIT010";

    /// <summary>A YAML feature that kits do without: anchors, aliases, merge keys, tags, several documents.</summary>
    public const string RefusedFeature = "KIT011";

    /// <summary>The file is larger, deeper or longer than any honest kit.</summary>
    public const string TooMuch = "KIT012";

    /// <summary>The file is not UTF-8 text.</summary>
    public const string NotText = "KIT013";

    /// <summary>The file holds nothing.</summary>
    public const string Empty = "KIT014";

    /// <summary>The parts library has no such part.</summary>
    public const string MissingPart = "KIT015";

    /// <summary>Parts refer to each other in a circle.</summary>
    public const string PartCycle = "KIT016";

    /// <summary>A part's name is no plain name, or climbs out of the parts folder.</summary>
    public const string PartName = "KIT017";

    /// <summary>A part does not say where its figures come from.</summary>
    public const string PartWithoutSource = "KIT018";

    /// <summary>A warning: a value that can be right but seldom is.</summary>
    public const string Unusual = "KIT019";

    /// <summary>So many faults that the rest is not shown.</summary>
    public const string TooManyFaults = "KIT020";

    /// <summary>A key that changes nothing here, as what stands beside it makes it void.</summary>
    public const string WithoutEffect = "KIT021";

    /// <summary>A file of a measured light distribution is not laid out as LM-63 has it.</summary>
    public const string Photometry = "KIT022";

    /// <summary>A warning: a letter that no bundled font prints.</summary>
    public const string NotPrinted = "KIT023";
}
