using System.Globalization;
using System.Text;
using System.Xml;
using System.Xml.Linq;
using StudioKit.Field.Scale;

namespace StudioKit.FieldFiles.Scale;

/// <summary>The XMP sidecar of a scaled copy (ISO 16684-1).</summary>
internal static class ScaleSidecar
{
    private static readonly XNamespace Rdf = "http://www.w3.org/1999/02/22-rdf-syntax-ns#";
    private static readonly XNamespace Dc = "http://purl.org/dc/elements/1.1/";
    private static readonly XNamespace Meta = "adobe:ns:meta/";

    // No standard schema has a property for the size of a pixel at the subject.
    private static readonly XNamespace Own = "urn:studiokit:scale#";

    public static byte[] Write(ScaleJob job, ScaleBar bar)
    {
        var micrometres = job.MetresPerPixel * 1e6;
        var caption = string.Create(CultureInfo.InvariantCulture, $"Scale bar {bar.Label}; {micrometres:0.####} µm per pixel.");
        var description = new XElement(
            Rdf + "Description",
            new XAttribute(Rdf + "about", ""),
            new XAttribute(XNamespace.Xmlns + "dc", Dc),
            new XAttribute(XNamespace.Xmlns + "scale", Own),
            new XElement(Dc + "source", Path.GetFileName(job.Source)),
            new XElement(
                Dc + "description",
                new XElement(Rdf + "Alt", new XElement(Rdf + "li", new XAttribute(XNamespace.Xml + "lang", "x-default"), caption))),
            new XElement(Own + "MicrometresPerPixel", micrometres.ToString("0.######", CultureInfo.InvariantCulture)),
            new XElement(Own + "BarLengthMicrometres", (bar.Length * 1e6).ToString("0.######", CultureInfo.InvariantCulture)),
            new XElement(Own + "Origin", job.Origin));
        var packet = new XElement(
            Meta + "xmpmeta",
            new XAttribute(XNamespace.Xmlns + "x", Meta),
            new XElement(Rdf + "RDF", new XAttribute(XNamespace.Xmlns + "rdf", Rdf), description));

        var text = new StringBuilder();
        using (var writer = XmlWriter.Create(text, new XmlWriterSettings { Indent = true, OmitXmlDeclaration = true, NewLineChars = "\n" }))
        {
            packet.WriteTo(writer);
        }

        // The packet marks are fixed by the standard, id included.
        return Encoding.UTF8.GetBytes($"<?xpacket begin=\"\uFEFF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n{text}\n<?xpacket end=\"w\"?>\n");
    }
}
