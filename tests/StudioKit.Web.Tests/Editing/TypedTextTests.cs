using StudioKit.Web.Editing;

namespace StudioKit.Web.Tests.Editing;

/// <summary>A field of the browser gives line feeds alone (HTML standard, the textarea element's API value); a file keeps the line ends it has.</summary>
public sealed class TypedTextTests
{
    [Theory]
    [InlineData("a\r\nb\r\n", "a\nb\n", "a\r\nb\r\n")]
    [InlineData("a\r\nb\r\n", "a\nx\nb\n", "a\r\nx\r\nb\r\n")]
    [InlineData("a\r\nb\nc", "a\nb\nd", "a\r\nb\nd")]
    [InlineData("a\r\nb", "a\nb\nc", "a\r\nb\r\nc")]
    [InlineData("a\nb\n", "a\nc\n", "a\nc\n")]
    public void Lines_keep_their_ends(string text, string typed, string wanted) => TypedText.Into(text, typed).Should().Be(wanted);

    [Fact]
    public void A_field_in_which_nothing_was_typed_gives_the_very_text_back() =>
        Gen.OneOf(Gen.Const("\r\n"), Gen.Const("\n"), Gen.Const("a"), Gen.Const("b: ")).Array[0, 30].Select(string.Concat)
            .Sample(text => TypedText.Into(text, text.ReplaceLineEndings("\n")) == text, iter: 100);

    [Fact]
    public void What_was_typed_is_all_there() =>
        Gen.Select(Gen.String["ab\n"], Gen.String["ab\n"]).Sample((text, typed) => TypedText.Into(text.ReplaceLineEndings("\r\n"), typed).ReplaceLineEndings("\n") == typed, iter: 100);
}
