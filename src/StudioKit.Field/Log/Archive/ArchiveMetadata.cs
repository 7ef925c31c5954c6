using System.Globalization;
using System.Xml.Linq;

namespace StudioKit.Field.Log.Archive;

/// <summary>The two XML files of a Darwin Core archive: what stands in which column, and what the data set is.</summary>
internal static class ArchiveMetadata
{
    public static readonly XNamespace Text = "http://rs.tdwg.org/dwc/text/";
    private static readonly XNamespace Eml = "https://eml.ecoinformatics.org/eml-2.2.0";

    public static XDocument Meta(ArchiveTable core, IEnumerable<ArchiveTable> extensions) => new(
        new XElement(
            Text + "archive",
            new XAttribute("metadata", "eml.xml"),
            Table("core", "id", core),
            extensions.Select(extension => Table("extension", "coreid", extension))));

    public static XDocument DataSet(DataSetDescription description) => new(
        new XElement(
            Eml + "eml",
            new XAttribute(XNamespace.Xmlns + "eml", Eml),
            new XAttribute("packageId", $"{description.Title} {description.Published.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}"),
            new XAttribute("system", "StudioKit"),
            new XElement(
                "dataset",
                new XElement("title", description.Title),
                new XElement("creator", new XElement("individualName", new XElement("surName", description.Creator))),
                new XElement("pubDate", description.Published.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)),
                new XElement("language", "en"),
                new XElement("abstract", new XElement("para", description.Abstract)),
                new XElement("intellectualRights", new XElement("para", description.Licence)),
                new XElement("contact", new XElement("individualName", new XElement("surName", description.Creator))))));

    private static XElement Table(string kind, string id, ArchiveTable table) => new(
        Text + kind,
        new XAttribute("encoding", "UTF-8"),
        new XAttribute("fieldsTerminatedBy", ","),
        new XAttribute("linesTerminatedBy", "\\n"),
        new XAttribute("fieldsEnclosedBy", "\""),
        new XAttribute("ignoreHeaderLines", "1"),
        new XAttribute("rowType", table.RowType),
        new XElement(Text + "files", new XElement(Text + "location", table.FileName)),
        new XElement(Text + id, new XAttribute("index", "0")),
        table.Terms.Select((term, index) => new XElement(Text + "field", new XAttribute("index", index), new XAttribute("term", term))));
}
