using System.Security.Cryptography;
using System.Text;
using StudioKit.Physics;

namespace StudioKit.Kits;

/// <summary>What came of reading a kit file.</summary>
/// <param name="Kit">The kit; none where there are errors.</param>
/// <param name="Diagnostics">Everything wrong with the file and the parts it names, in order of place.</param>
/// <param name="Defaults">Defaults that stood in for what the file does not say, in order of the sections.</param>
/// <param name="Uncertainties">Uncertainties written after <c>±</c>, by the path of their value, e.g. <c>flashes[0].guide-number</c>.</param>
public sealed record KitReadResult(
    KitSpec? Kit, ValueList<Diagnostic> Diagnostics, ValueList<DefaultUsed> Defaults, ValueDictionary<Uncertainty> Uncertainties)
{
    private const int HashDigits = 12;

    /// <summary>Whether anything stands in the way of using the kit.</summary>
    public bool HasErrors => Kit is null;

    /// <summary>What the file and its parts say, as written, by the path of the key, e.g. <c>set-ups[0].lights[1].distance</c>; under a section's path the part that it names.</summary>
    public ValueDictionary<string> Written { get; init; } = new();

    /// <summary>Parts that the file or one of its parts names and that are nowhere, each as <c>KIND/NAME</c>, e.g. <c>pipes/pvc-u-20x1.5</c>.</summary>
    public ValueList<string> MissingParts { get; init; } = [];

    /// <summary>All parts that are named, those that are missing last.</summary>
    public IEnumerable<string> NamedParts => HashedTexts.Parts.Keys.Concat(MissingParts).Distinct(StringComparer.Ordinal);

    /// <summary>Corrections measured in the field that are already in <see cref="Kit"/>; none where it stands as written.</summary>
    public MeasuredCorrections? Corrections { get; init; }

    /// <summary>Day and place that it is planned for in place of those of its site, as text; none where the site's own stand.</summary>
    public string? OtherDay { get; init; }

    /// <summary>
    /// First twelve hexadecimal digits of the SHA-256 of the kit's text, of every part it uses, of its corrections and of another day that it is planned for: same hash, same kit, same sheets.
    /// </summary>
    /// <remarks>Worked out when asked for, as a mere check of a kit needs none. Line endings and a byte-order mark make no difference.</remarks>
    public string ContentHash => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(HashedText())))[..HashDigits];

    // The kit's text and its parts' texts by place.
    internal (string Kit, ValueDictionary<string> Parts) HashedTexts { get; init; } = ("", new());

    private string HashedText() => string.Join(
        '\0', HashedTexts.Parts.OrderBy(part => part.Key, StringComparer.Ordinal).Select(part => $"{part.Key}\0{part.Value}").Prepend(HashedTexts.Kit)
            .Concat(Corrections is null ? [] : ["corrections", Corrections.Text.ReplaceLineEndings("\n")])
            .Concat(OtherDay is null ? [] : ["day", OtherDay]));
}
