using System.Reflection;
using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;
using System.Reflection.PortableExecutable;

namespace StudioKit.Web.Tests.Engine;

/// <summary>Whoever reads the page has no command line: what it says names what can be done on the page.</summary>
public sealed class PageWordsTests
{
    private static readonly string[] OfTheCommandLine = ["studiokit ", "'studiokit", " --", "--kit", "run plan", "Run plan", "calibrate"];

    // What the page cannot reach: the log and its release, scales burnt into pictures, advice without a plan; and printed sheets, which are the same from either.
    private static readonly string[] Elsewhere = ["StudioKit.Field.Log", "StudioKit.Field.Scale", "StudioKit.Field.Advice.TestFrameAdvice", "StudioKit.Sheets.Documents"];

    [Theory]
    [InlineData("StudioKit.Kits")]
    [InlineData("StudioKit.Planning")]
    [InlineData("StudioKit.Sheets")]
    [InlineData("StudioKit.Field")]
    [InlineData("StudioKit.Web")]
    public void No_text_that_the_page_can_show_names_a_command_or_an_option(string assembly)
    {
        var said = Texts(assembly).ToList();

        said.Should().HaveCountGreaterThan(100, "the texts were read");
        said.Where(text => OfTheCommandLine.Any(word => text.Text.Contains(word, StringComparison.Ordinal)))
            .Select(text => $"{text.Type}: {text.Text}").Should().BeEmpty();
    }

    [Fact]
    public void An_empty_text_leads_to_the_kit_to_begin_with()
    {
        var told = new Asked().Plan("");

        told.Faults.Should().ContainSingle().Which.Hint.Should().Contain("commented kit").And.Contain("Kits");
    }

    [Fact]
    public void Light_without_a_number_is_told_what_light_is_usual()
    {
        var told = new Asked().Plan(Asked.Demo().Replace("ambient: EV 12", "ambient: gloomy", StringComparison.Ordinal));

        told.Faults.Should().ContainSingle(fault => fault.IsError).Which.Hint.Should().Contain("EV 12").And.NotContain("studiokit");
    }

    // Every string that the code of an assembly loads, with the type that loads it.
    private static IEnumerable<(string Type, string Text)> Texts(string assembly)
    {
        using var file = new PEReader(File.OpenRead(Assembly.Load(assembly).Location));
        var reader = file.GetMetadataReader();
        foreach (var handle in reader.MethodDefinitions)
        {
            var method = reader.GetMethodDefinition(handle);
            var type = Outermost(reader, method.GetDeclaringType());
            if (method.RelativeVirtualAddress == 0 || Elsewhere.Any(space => type.StartsWith(space, StringComparison.Ordinal)))
            {
                continue;
            }

            foreach (var text in Loaded(reader, file.GetMethodBody(method.RelativeVirtualAddress).GetILBytes()!))
            {
                yield return (type, text);
            }
        }
    }

    // ECMA-335, III.4.16: ldstr is 0x72 with a token whose highest byte is 0x70; the same bytes elsewhere in the code name no string of the heap, or add one that is there anyhow.
    private static IEnumerable<string> Loaded(MetadataReader reader, byte[] code)
    {
        var most = reader.GetHeapSize(HeapIndex.UserString);
        for (var at = 0; at + 4 < code.Length; at++)
        {
            if (code[at] == 0x72 && code[at + 4] == 0x70 && (code[at + 1] | (code[at + 2] << 8) | (code[at + 3] << 16)) is var token && token > 0 && token < most)
            {
                yield return reader.GetUserString(MetadataTokens.UserStringHandle(token));
            }
        }
    }

    private static string Outermost(MetadataReader reader, TypeDefinitionHandle handle)
    {
        var type = reader.GetTypeDefinition(handle);
        return type.GetDeclaringType() is { IsNil: false } outer ? Outermost(reader, outer) : $"{reader.GetString(type.Namespace)}.{reader.GetString(type.Name)}";
    }
}
