using System.Text;

namespace StudioKit.Kits.Tests;

/// <summary>Every broken kit under <c>Broken/</c> says exactly what its sibling <c>.expected</c> file says.</summary>
/// <remarks>The sentences were written and read for a photographer; the files guard them. Set STUDIOKIT_REWRITE_EXPECTED to write them anew after a change of wording, then read the difference.</remarks>
public sealed class BrokenKitTests
{
    private static readonly string Folder = Path.Combine(KitFolder.Path, "..", "tests", "StudioKit.Kits.Tests", "Broken");

    public static TheoryData<string> Files() => [.. Directory.EnumerateFiles(Folder, "*.yaml").Select(path => Path.GetFileNameWithoutExtension(path)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Files))]
    public void A_broken_kit_says_what_is_wrong_and_where(string name)
    {
        var result = KitReader.Read(Path.Combine(Folder, name + ".yaml"));
        var said = string.Concat(result.Diagnostics.Select(fault => Relative(fault).Format() + "\n"));
        var expected = Path.Combine(Folder, name + ".expected");
        if (Environment.GetEnvironmentVariable("STUDIOKIT_REWRITE_EXPECTED") is { Length: > 0 })
        {
            File.WriteAllText(expected, said);
        }

        result.Kit.Should().BeNull();
        said.Should().Be(File.ReadAllText(expected));
    }

    [Fact]
    public void A_file_of_ten_megabytes_is_refused_without_being_read()
    {
        var path = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName() + ".yaml");
        try
        {
            File.WriteAllText(path, string.Concat(Enumerable.Repeat("kit: moth\n", 1_000_000)));

            var result = KitReader.Read(path);

            result.Diagnostics.Should().ContainSingle().Which.Message.Should().Be("The file is too large.");
            result.Diagnostics[0].Hint.Should().Be("It may have at most 1000 kB.");
        }
        finally
        {
            File.Delete(path);
        }
    }

    [Fact]
    public void A_missing_file_is_the_callers_business() =>
        FluentActions.Invoking(() => KitReader.Read(Path.Combine(Folder, "no-such-kit.yaml"))).Should().Throw<FileNotFoundException>();

    [Fact]
    public void Hundreds_of_faults_are_cut_short()
    {
        var text = new StringBuilder("kit: Broken\n");
        for (var i = 0; i < 500; i++)
        {
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"key{i}: 1\n");
        }

        var result = KitReader.Parse(text.ToString(), "kit.yaml", PartsLibrary.Embedded);

        result.Diagnostics.Should().HaveCount(100);
        result.Diagnostics.Should().Contain(fault => fault.Code == DiagnosticCodes.TooManyFaults);
    }

    private static Diagnostic Relative(Diagnostic fault) => fault with
    {
        File = fault.File.StartsWith(Folder.Replace('\\', '/'), StringComparison.Ordinal) || fault.File.StartsWith(Folder, StringComparison.Ordinal)
            ? fault.File[(Folder.Length + 1)..].Replace('\\', '/')
            : fault.File,
    };
}
