using System.Buffers.Binary;
using System.Text;

namespace StudioKit.Typefaces.Tests;

public sealed class TypefaceFilesTests
{
    public static TheoryData<string> Fonts => [.. TypefaceFiles.Names.Where(name => name.EndsWith(".ttf", StringComparison.Ordinal))];

    // OpenType specification, "Organization of an OpenType Font": version 0x00010000 for TrueType outlines, then the count of tables.
    [Theory]
    [MemberData(nameof(Fonts))]
    public void A_bundled_font_is_a_true_type_file(string name)
    {
        var file = TypefaceFiles.Read(name);

        BinaryPrimitives.ReadUInt32BigEndian(file).Should().Be(0x00010000);
        BinaryPrimitives.ReadUInt16BigEndian(file.AsSpan(4)).Should().BeGreaterThan(8);
    }

    [Theory]
    [MemberData(nameof(Fonts))]
    public void A_bundled_font_comes_with_its_licence(string name)
    {
        var licence = TypefaceFiles.Names.Single(file => file.StartsWith(name.Split('-')[0] + "-", StringComparison.Ordinal) && file.EndsWith(".txt", StringComparison.Ordinal));

        Encoding.UTF8.GetString(TypefaceFiles.Read(licence)).Should().MatchRegex(licence.EndsWith("-OFL.txt", StringComparison.Ordinal) ? "SIL OPEN FONT LICENSE Version 1.1" : @"Apache License\s+Version 2.0, January 2004");
    }

    [Fact]
    public void A_font_that_is_not_bundled_is_refused_by_name()
    {
        var read = () => TypefaceFiles.Read("Comic.ttf");

        read.Should().Throw<ArgumentException>().WithMessage("*Comic.ttf*");
    }
}
