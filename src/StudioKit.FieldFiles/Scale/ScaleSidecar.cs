using System.Buffers;
using System.Globalization;
using System.Text;
using System.Xml;
using System.Xml.Linq;
using StudioKit.Field.Pictures;
using StudioKit.Field.Scale;
using StudioKit.Writing;

namespace StudioKit.FieldFiles.Scale;

/// <summary>The XMP sidecar of a scaled copy (ISO 16684-1): what is written into it and what can be read back.</summary>
public static class ScaleSidecar
{
    // Ours take a thousand bytes; whatever is far larger was written by somebody else.
    private const long LargestBytes = 1_000_000;
    private static readonly XNamespace Rdf = "http://www.w3.org/1999/02/22-rdf-syntax-ns#";
    private static readonly XNamespace Dc = "http://purl.org/dc/elements/1.1/";
    private static readonly XNamespace Meta = "adobe:ns:meta/";

    // No standard schema has a property for the size of a pixel at the subject.
    private static readonly XNamespace Own = "urn:studiokit:scale#";

    /// <summary>Where the sidecar of a picture lies.</summary>
    /// <param name="picture">Path of the picture.</param>
    public static string PathBeside(string picture) => picture + ".xmp";

    /// <summary>Where it lies where somebody else keeps a sidecar under the usual name, which is theirs for good.</summary>
    /// <param name="picture">Path of the picture.</param>
    public static string OwnPathBeside(string picture) => picture + ".scale.xmp";

    /// <summary>Where the sidecar of a picture is to be written: under the usual name unless that is somebody else's or ours has another already.</summary>
    /// <param name="picture">Path of the picture.</param>
    public static string PathToWriteBeside(string picture) =>
        !File.Exists(OwnPathBeside(picture)) && FileBatch.IsFree(PathBeside(picture)) ? PathBeside(picture) : OwnPathBeside(picture);

    /// <summary>Reads what a picture's sidecar says of its scale.</summary>
    /// <param name="picture">Path of the picture, which need not exist itself.</param>
    /// <returns>The scale; none where there is no sidecar, or it holds no scale of ours that can be true.</returns>
    public static RecordedScale? ReadBeside(string picture)
    {
        ArgumentException.ThrowIfNullOrEmpty(picture);
        return Read(File.Exists(OwnPathBeside(picture)) ? OwnPathBeside(picture) : PathBeside(picture));
    }

    /// <summary>Reads what a sidecar says of its picture's scale.</summary>
    /// <param name="path">Path of the sidecar.</param>
    /// <returns>The scale; none where there is no such file, or it holds no scale of ours that can be true.</returns>
    public static RecordedScale? Read(string path)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        try
        {
            using var stream = File.OpenRead(path);
            return stream.Length > LargestBytes ? null : Read(stream);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or XmlException)
        {
            return null;
        }
    }

    internal static byte[] Write(RecordedScale scale, string barLabel)
    {
        var micrometres = Number(scale.MicrometresPerPixel);
        var caption = $"Scale bar {barLabel}; {scale.MicrometresPerPixel.ToString("0.####", CultureInfo.InvariantCulture)} µm per pixel.";
        var description = new XElement(
            Rdf + "Description",
            new XAttribute(Rdf + "about", ""),
            new XAttribute(XNamespace.Xmlns + "dc", Dc),
            new XAttribute(XNamespace.Xmlns + "scale", Own),
            new XElement(Dc + "source", Plain(scale.Source)),
            new XElement(
                Dc + "description",
                new XElement(Rdf + "Alt", new XElement(Rdf + "li", new XAttribute(XNamespace.Xml + "lang", "x-default"), caption))),
            new XElement(Own + "MicrometresPerPixel", micrometres),
            Property("RelativeUncertainty", scale.RelativeUncertainty),
            Property("BarLengthMicrometres", scale.BarLengthMicrometres),
            Property("PixelsWide", scale.Pixels?.Wide),
            Property("PixelsHigh", scale.Pixels?.High),
            Property("Kit", scale.Kit),
            Property("Framing", scale.Framing),
            Property("Magnification", scale.Magnification),
            Property("Origin", scale.Origin));
        return Packet(description);
    }

    private static byte[] Packet(XElement description)
    {
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

    private static RecordedScale? Read(Stream stream)
    {
        using var reader = XmlReader.Create(stream, new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null });
        var all = XDocument.Load(reader).Descendants().Where(element => element.Name.Namespace == Own || element.Name == Dc + "source").ToList();
        return Positive(all, "MicrometresPerPixel") is not { } size ? null : new RecordedScale
        {
            MicrometresPerPixel = size,
            RelativeUncertainty = Positive(all, "RelativeUncertainty"),
            BarLengthMicrometres = Positive(all, "BarLengthMicrometres"),
            Pixels = Count(all, "PixelsWide") is { } wide && Count(all, "PixelsHigh") is { } high ? new PixelDimensions(wide, high) : null,
            Source = Text(all, "source"),
            Origin = Text(all, "Origin"),
            Kit = Text(all, "Kit"),
            Framing = Text(all, "Framing"),
            Magnification = Positive(all, "Magnification"),
        };
    }

    private static XElement? Property(string name, double? value) => value is { } number ? new XElement(Own + name, Number(number)) : null;

    private static XElement? Property(string name, string text) => text.Length == 0 ? null : new XElement(Own + name, Plain(text));

    // What XML cannot hold at all, such as a control character in a file's name, is left out rather than losing the sidecar.
    private static string Plain(string text)
    {
        var kept = new StringBuilder(text.Length);
        for (var (i, taken) = (0, 0); i < text.Length; i += taken)
        {
            if (Rune.DecodeFromUtf16(text.AsSpan(i), out var letter, out taken) == OperationStatus.Done && (letter.Value > 0xFFFF || XmlConvert.IsXmlChar((char)letter.Value)))
            {
                kept.Append(letter);
            }
        }

        return kept.ToString();
    }

    private static string Number(double value) => value.ToString("0.######", CultureInfo.InvariantCulture);

    private static string Text(List<XElement> all, string name) => all.Find(element => element.Name.LocalName == name)?.Value ?? "";

    private static double? Positive(List<XElement> all, string name) =>
        double.TryParse(Text(all, name), NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value) && value > 0
            ? value
            : null;

    private static int? Count(List<XElement> all, string name) =>
        int.TryParse(Text(all, name), NumberStyles.None, CultureInfo.InvariantCulture, out var value) && value > 0 ? value : null;
}
