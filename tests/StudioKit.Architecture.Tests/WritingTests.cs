using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;

namespace StudioKit.Architecture.Tests;

/// <summary>Files are opened for writing, moved and deleted in one project; the compiled code of every other one is searched for calls that do it.</summary>
public sealed class WritingTests
{
    // What makes, changes, moves or deletes a file or folder, by type: every call of it, or those named.
    private static readonly Dictionary<string, string[]> Writing = new(StringComparer.Ordinal)
    {
        ["System.IO.File"] =
        [
            "Create", "CreateText", "CreateSymbolicLink", "Open", "OpenHandle", "OpenWrite", "Copy", "Move", "Replace", "Delete", "AppendText", "Encrypt", "Decrypt",
            "AppendAllText", "AppendAllLines", "AppendAllBytes", "AppendAllTextAsync", "AppendAllLinesAsync", "AppendAllBytesAsync",
            "WriteAllText", "WriteAllLines", "WriteAllBytes", "WriteAllTextAsync", "WriteAllLinesAsync", "WriteAllBytesAsync", "SetAttributes", "SetUnixFileMode",
        ],
        ["System.IO.FileInfo"] =
            ["Create", "CreateText", "Open", "OpenWrite", "AppendText", "CopyTo", "MoveTo", "Replace", "Delete", "Encrypt", "Decrypt"],
        ["System.IO.FileSystemInfo"] = ["CreateAsSymbolicLink", "Delete", "set_Attributes", "set_UnixFileMode"],
        ["System.IO.Directory"] = ["CreateDirectory", "CreateTempSubdirectory", "CreateSymbolicLink", "Delete", "Move"],
        ["System.IO.DirectoryInfo"] = ["Create", "CreateSubdirectory", "Delete", "MoveTo"],
        ["System.IO.FileStream"] = [],
        ["System.IO.Path"] = ["GetTempFileName"],
        ["System.IO.RandomAccess"] = ["Write", "WriteAsync", "SetLength"],
        ["System.IO.MemoryMappedFiles.MemoryMappedFile"] = [],
        ["System.IO.Compression.ZipFile"] = [],
        ["System.IO.Compression.ZipFileExtensions"] = [],
        ["SkiaSharp.SKFileWStream"] = [],
        ["BitMiracle.LibTiff.Classic.Tiff"] = ["Open"],
    };

    // Calls that write only where they are given a file's name; with a stream they are harmless.
    private static readonly Dictionary<string, string[]> WritingByName = new(StringComparer.Ordinal)
    {
        ["System.IO.StreamWriter"] = [".ctor"],
        ["System.Xml.XmlWriter"] = ["Create"],
        ["System.Xml.Linq.XDocument"] = ["Save"],
        ["System.Xml.Linq.XElement"] = ["Save"],
        ["PdfSharp.Pdf.PdfDocument"] = ["Save"],
    };

    public static TheoryData<string> Projects => [.. Repository.ProjectFiles("src").Select(path => Path.GetFileNameWithoutExtension(path)).Where(name => name != "StudioKit.Writing")];

    [Theory]
    [MemberData(nameof(Projects))]
    public void No_project_but_that_for_writing_opens_a_file_for_writing(string project)
    {
        var assembly = Path.Combine(AppContext.BaseDirectory, (project == "StudioKit.Cli" ? "studiokit" : project) + ".dll");

        WritingCalls(assembly).Should().BeEmpty("files are written by a FileBatch alone");
    }

    /// <summary>The search itself finds what it looks for where it is known to be.</summary>
    [Fact]
    public void The_project_for_writing_is_seen_to_write() =>
        WritingCalls(Path.Combine(AppContext.BaseDirectory, "StudioKit.Writing.dll")).Should().Contain("System.IO.FileStream..ctor").And.Contain("System.IO.File.Move");

    [Fact]
    public void A_writer_that_is_given_a_name_is_seen_to_write() =>
        WritingCalls(typeof(WritingTests).Assembly.Location).Should().Contain("System.IO.StreamWriter..ctor").And.NotContain("System.Xml.XmlWriter.Create");

    // Compiled for the test above to find, never run.
    internal static StreamWriter WriterOf(string path) => new(path);

    internal static System.Xml.XmlWriter WriterOf(Stream stream) => System.Xml.XmlWriter.Create(stream);

    private static IEnumerable<string> WritingCalls(string assembly)
    {
        using var file = new PEReader(File.OpenRead(assembly));
        var metadata = file.GetMetadataReader();
        return [.. metadata.MemberReferences.Select(metadata.GetMemberReference).Where(member => Writes(metadata, member)).Select(member => NameOf(metadata, member)).Distinct()];
    }

    private static bool Writes(MetadataReader metadata, MemberReference member)
    {
        var (type, name) = (TypeOf(metadata, member), metadata.GetString(member.Name));
        return (Writing.TryGetValue(type, out var names) && (names.Length == 0 || names.Contains(name)))
            || (WritingByName.TryGetValue(type, out names) && names.Contains(name) && FirstParameterIsText(metadata, member));
    }

    private static string NameOf(MetadataReader metadata, MemberReference member) => $"{TypeOf(metadata, member)}.{metadata.GetString(member.Name)}";

    private static string TypeOf(MetadataReader metadata, MemberReference member)
    {
        if (member.Parent.Kind != HandleKind.TypeReference)
        {
            return "";
        }

        var type = metadata.GetTypeReference((TypeReferenceHandle)member.Parent);
        return $"{metadata.GetString(type.Namespace)}.{metadata.GetString(type.Name)}";
    }

    // ECMA-335 II.23.2.2: calling convention, number of parameters, return type, parameters; all of the calls above return nothing or a class.
    private static bool FirstParameterIsText(MetadataReader metadata, MemberReference member)
    {
        var signature = metadata.GetBlobReader(member.Signature);
        signature.ReadSignatureHeader();
        if (signature.ReadCompressedInteger() == 0)
        {
            return false;
        }

        if (signature.ReadSignatureTypeCode() == SignatureTypeCode.TypeHandle)
        {
            signature.ReadTypeHandle();
        }

        return signature.ReadSignatureTypeCode() == SignatureTypeCode.String;
    }
}
