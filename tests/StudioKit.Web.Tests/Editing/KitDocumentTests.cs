using StudioKit.Web.Editing;

namespace StudioKit.Web.Tests.Editing;

public sealed class KitDocumentTests
{
    private readonly KitDocument _kit = new("fen.yaml", "fen");

    [Fact]
    public void What_was_taken_back_can_be_made_again_and_taken_back_again()
    {
        _kit.Change("fen, wetter");
        _kit.Change("fen, wetter, windy");

        _kit.Undo();
        _kit.Undo();
        _kit.Text.Should().Be("fen");
        _kit.Redo();
        _kit.Redo();
        _kit.Text.Should().Be("fen, wetter, windy");
        _kit.CanRedo.Should().BeFalse();
        _kit.Undo();
        _kit.Text.Should().Be("fen, wetter");
    }

    [Fact]
    public void What_was_taken_back_cannot_be_made_again_over_a_change_made_since()
    {
        _kit.Change("fen, wetter");
        _kit.Undo();

        _kit.Change("heath");

        _kit.CanRedo.Should().BeFalse();
        _kit.Undo();
        _kit.Text.Should().Be("fen");
    }

    [Fact]
    public void A_text_put_in_place_of_itself_is_no_change_to_take_back()
    {
        _kit.Change("fen");

        _kit.CanUndo.Should().BeFalse();
    }
}
