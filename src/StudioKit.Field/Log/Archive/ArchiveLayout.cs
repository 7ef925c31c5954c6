using System.Globalization;
using System.Xml;
using System.Xml.Linq;

namespace StudioKit.Field.Log.Archive;

/// <summary>What meta.xml says of an archive's tables (Darwin Core text guide and its schema, TDWG): one core, extensions, and what stands in which column.</summary>
/// <param name="Core">The one core.</param>
/// <param name="Extensions">The extensions.</param>
internal sealed record ArchiveLayout(ArchiveTableLayout Core, IReadOnlyList<ArchiveTableLayout> Extensions)
{
    private static readonly XNamespace Text = ArchiveMetadata.Text;

    /// <summary>Reads meta.xml; whatever would be read in part is refused.</summary>
    /// <exception cref="ArchiveFaultException">It says something that cannot be taken in.</exception>
    public static ArchiveLayout Read(string xml)
    {
        var root = Parse(xml);
        if (root.Name != Text + "archive")
        {
            throw new ArchiveFaultException("FLD463", $"meta.xml begins with <{root.Name.LocalName}>, not with <archive xmlns=\"{Text}\">.");
        }

        var cores = root.Elements(Text + "core").ToList();
        if (cores.Count != 1)
        {
            throw new ArchiveFaultException("FLD463", $"meta.xml has {(cores.Count == 0 ? "no core" : $"{cores.Count} cores")}; an archive has one.");
        }

        var other = root.Elements().FirstOrDefault(element => element.Name != Text + "core" && element.Name != Text + "extension");
        return other is not null
            ? throw new ArchiveFaultException("FLD463", $"meta.xml has a <{other.Name.LocalName}>, which no archive has beside its core and extensions.")
            : new ArchiveLayout(
                ArchiveTableLayout.Read(cores[0], "id", [DarwinCoreTerms.Occurrence]),
                [.. root.Elements(Text + "extension").Select(table => ArchiveTableLayout.Read(table, "coreid", [DarwinCoreTerms.Multimedia, DarwinCoreTerms.MeasurementOrFact]))]);
    }

    /// <summary>A whole number that an attribute may give.</summary>
    internal static int? Number(XElement element, string attribute) => (string?)element.Attribute(attribute) is not { } text
        ? null
        : int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number < 10_000
            ? number
            : throw new ArchiveFaultException("FLD464", $"meta.xml gives '{text}' as {attribute}, which is no column.", "Columns are counted from 0.");

    private static XElement Parse(string xml)
    {
        using var text = new StringReader(xml.TrimStart('\uFEFF'));
        using var reader = XmlReader.Create(text, new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null });
        try
        {
            return XDocument.Load(reader).Root!;
        }
        catch (XmlException error)
        {
            throw new ArchiveFaultException("FLD463", $"meta.xml is no XML that can be read, or has a document type, which no archive needs: line {error.LineNumber}, column {error.LinePosition}.");
        }
    }
}
