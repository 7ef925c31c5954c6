using System.Text;
using StudioKit.Web.Engine;
using StudioKit.Web.Results;

namespace StudioKit.Web.Tests.Storage;

/// <summary>What can be a kit is told from what cannot by the reader's limits: UTF-8 text of at most 1,000,000 bytes without control characters.</summary>
public sealed class OpenedKitsTests
{
    private const int FiveMegabytes = 5_000_000;

    [Theory]
    [InlineData("too large", "at most 1000 kB")]
    [InlineData("one byte too large", "at most 1000 kB")]
    [InlineData("not UTF-8", "not UTF-8")]
    [InlineData("an overlong slash", "not UTF-8")]
    [InlineData("a picture", "not UTF-8")]
    [InlineData("binary", "control character")]
    public void A_file_that_cannot_be_a_kits_is_refused_in_a_sentence(string kind, string sentence)
    {
        var answer = OpenedKits.Answer(new OpenRequest(Convert.ToBase64String(Hostile(kind)), $"{kind}.yaml"));

        answer.Text.Should().BeNull();
        answer.Problem.Should().Contain(sentence);
    }

    [Theory]
    [InlineData("name: fen\r\nset-ups: []\r\n")]
    [InlineData("# Moor äöü 蛾\nname: fen")]
    [InlineData("")]
    public void A_text_comes_in_as_it_was_written(string text) =>
        OpenedKits.Answer(new OpenRequest(Convert.ToBase64String(Encoding.UTF8.GetBytes(text)), "fen.yaml")).Should().BeEquivalentTo(new { Text = text, Problem = "" });

    [Fact]
    public void A_byte_order_mark_is_no_part_of_the_text() =>
        OpenedKits.Answer(new OpenRequest(Convert.ToBase64String([0xEF, 0xBB, 0xBF, .. "name: fen"u8]), "fen.yaml")).Text.Should().Be("name: fen");

    [Theory]
    [InlineData("kit: Fen\ncamera: x", OpenedKind.Kit)]
    [InlineData("# of the fen\r\nset-ups: []\r\n", OpenedKind.Kit)]
    [InlineData("", OpenedKind.Kit)]
    [InlineData("# nothing yet", OpenedKind.Kit)]
    [InlineData("name: reed pipe\nwall: 2 mm\nsource: measured\n", OpenedKind.Part)]
    [InlineData("name: reed pipe\nwall: 2 mm\n", OpenedKind.Unsure)]
    [InlineData("- {text: let it go}\n", OpenedKind.Part)]
    [InlineData("IESNA:LM-63-2002\r\n[TEST] sedge\r\nTILT=NONE\r\n1 -1 1 2 1 1 2 0 0 0\r\n", OpenedKind.Part)]
    [InlineData("# measured\ncorrection-of: Fen\ndate: 2026-05-09\n", OpenedKind.Correction)]
    public void A_kit_a_part_and_a_correction_are_told_apart_by_their_keys(string text, OpenedKind kind) =>
        OpenedKits.Answer(new OpenRequest(Convert.ToBase64String(Encoding.UTF8.GetBytes(text)), "any.yaml")).Kind.Should().Be(kind);

    [Fact]
    public void The_kit_to_begin_with_can_be_planned()
    {
        var room = new EngineRoom(new Progress<string>());
        var starter = OpenedKits.Starter(new StarterRequest()).Text!;
        var request = System.Text.Json.JsonSerializer.Serialize(new PlanRequest(starter, "my-kit.yaml"), ResultsJson.Default.PlanRequest);

        var plan = System.Text.Json.JsonSerializer.Deserialize(room.Answer("plan", request), ResultsJson.Default.PlanAnswer);

        plan!.Verdict.Standing.Should().NotBe(Standing.Unread);
    }

    private static byte[] Hostile(string kind) => kind switch
    {
        "too large" => Filled(FiveMegabytes, (byte)'a'),
        "one byte too large" => Filled(1_000_001, (byte)'\n'),
        "not UTF-8" => [.. "name: fen "u8, 0xC3, 0x28],
        "an overlong slash" => [0xC0, 0xAF],
        "a picture" => [0x89, .. "PNG\r\n"u8, 0x1A, 0x0A, 0, 0, 0, 13],
        _ => Filled(1000, 0),
    };

    private static byte[] Filled(int count, byte value) => [.. Enumerable.Repeat(value, count)];
}
