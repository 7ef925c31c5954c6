using StudioKit.Web.Drawing;
using StudioKit.Web.Engine;
using StudioKit.Web.Results;

namespace StudioKit.Web.Editing;

/// <summary>
/// The studio of one set-up while something of it is moved: what it was planned as, what is moved and turned, and the preview of that. What is let go of is written into the kit; a power is set
/// on the flash and not written.
/// </summary>
/// <param name="engine">Who previews, and writes values into the text.</param>
/// <param name="desk">Where the kit is changed.</param>
public sealed class MovedStudio(IEngine engine, Desk desk)
{
    private string _hash = "";
    private string _chosen = "";
    private PreviewAnswer? _preview;
    private IReadOnlyList<HandleMove> _moves = [];
    private int _round;

    /// <summary>What is shown changed.</summary>
    public event EventHandler? Changed;

    /// <summary>The studio as it was planned.</summary>
    public StudioPicture? Planned { get; private set; }

    /// <summary>The framing in hand, as it was planned; none where nothing is lit. One that was chosen is the framing in hand when its map is there.</summary>
    public SeenFraming? PlannedFraming { get; private set; }

    /// <summary>The studio as it is shown.</summary>
    public StudioPicture? Shown => _preview?.Studio ?? Planned;

    /// <summary>The framing as it is shown. A moved flash may stand where nothing is lit; the map is then the last that was.</summary>
    public SeenFraming? Framing => _preview?.Studio is { Framings: [var framing, ..] } ? framing : PlannedFraming;

    /// <summary>The card as it is previewed; none where nothing is.</summary>
    public CardFace? Card => _preview?.Card;

    /// <summary>Place on the dial of the flash below, where it is turned by hand.</summary>
    public int? Mark { get; private set; }

    /// <summary>Whether it is turned away from what the card asks for.</summary>
    public bool IsTurned => Mark is not null && Mark != PlannedFraming?.Dial?.Set;

    /// <summary>Whether something is moved.</summary>
    public bool IsMoved => _moves.Count > 0;

    /// <summary>Why what was let go of could not be written; empty where it could.</summary>
    public string Refusal { get; private set; } = "";

    /// <summary>Shows a studio as it was planned.</summary>
    /// <param name="hash">Hash of its kit.</param>
    /// <param name="studio">The studio.</param>
    /// <returns>Whether it is of another plan than before.</returns>
    public bool Follow(string hash, StudioPicture studio)
    {
        Planned = studio;
        if (_hash == hash)
        {
            return false;
        }

        _hash = hash;
        Forget();

        // Until its own comes, the map of the plan before: nothing goes dark for a moment because something else was changed.
        PlannedFraming = Wanted is { Map: null } wanted && wanted.Framing == PlannedFraming?.Framing ? wanted with { Map = PlannedFraming.Map } : Wanted;
        _ = TakeAsync();
        return true;
    }

    /// <summary>Takes another framing in hand.</summary>
    /// <param name="framing">Its name.</param>
    public Task ChooseAsync(string framing)
    {
        _chosen = framing;
        Forget();
        return TakeAsync();
    }

    /// <summary>Follows the hand that moves something.</summary>
    /// <param name="phase">Whether it moves, lets go, or takes back.</param>
    /// <param name="moves">What is moved to where.</param>
    public Task MoveAsync(MovePhase phase, IReadOnlyList<HandleMove> moves)
    {
        // What is moved stays in sight, whichever framing is the hardest then.
        (_chosen, _moves, Refusal) = (Wanted?.Framing ?? "", moves, "");
        return phase switch
        {
            MovePhase.Dropped => WriteAsync(moves),
            MovePhase.TakenBack => LetGoAsync(""),
            _ => PreviewAsync(),
        };
    }

    /// <summary>Turns the power of the flash below.</summary>
    /// <param name="mark">Place on its dial; none for what the card asks for.</param>
    public Task TurnAsync(int? mark)
    {
        Mark = mark;
        return PreviewAsync();
    }

    private SeenFraming? Wanted => Planned?.Framings.FirstOrDefault(framing => framing.Framing == _chosen) ?? Planned?.Framings.MinBy(framing => framing.Darkest.Stops);

    // A plan tells the map of its hardest framing alone; those of the others are asked for when one is chosen.
    private async Task TakeAsync()
    {
        var (hash, wanted) = (_hash, Wanted);
        if (wanted is not { Map: null })
        {
            PlannedFraming = wanted;
            return;
        }

        var (answer, fault) = await engine.TryAsync(EngineQuestions.Map, new MapRequest(hash, Planned!.SetUp, wanted.Framing));
        if (hash == _hash && wanted == Wanted && (answer is not null || fault.Length > 0))
        {
            (PlannedFraming, Refusal) = (wanted with { Map = answer?.Map }, fault.Length > 0 ? fault : Refusal);
            Changed?.Invoke(this, EventArgs.Empty);
        }
    }

    // While a hand moves, each answer that comes is shown, or nothing would be as long as it moves; what was asked before it let go, or of another plan or framing, counts no more.
    private async Task PreviewAsync()
    {
        if (!IsMoved && Mark is null)
        {
            _round++;
            Show(null);
            return;
        }

        var round = _round;
        var (preview, fault) = await engine.TryAsync(EngineQuestions.Preview, new PreviewRequest(_hash, Planned!.SetUp, Wanted?.Framing ?? "", _moves, Mark));
        if (round == _round && (preview is not null || fault.Length > 0))
        {
            Refusal = fault.Length > 0 ? fault : Refusal;
            Show(preview ?? _preview);
        }
    }

    private async Task WriteAsync(IReadOnlyList<HandleMove> moves)
    {
        var lines = (from move in moves
                     join handle in Planned!.Handles on move.Key equals handle.Key
                     where handle.Value != move.Value
                     select new KitChangeLine(move.Key, Drawing.Path.Written(move.Value, handle.Unit))).ToList();
        if (lines.Count == 0 || desk.Kit is not { } kit)
        {
            await LetGoAsync("");
            return;
        }

        var text = kit.Text;
        var (edit, fault) = await engine.TryAsync(EngineQuestions.Edit, new EditRequest(text, lines));
        if (edit is not { Refusal.Length: 0 } || kit != desk.Kit || kit.Text != text)
        {
            await LetGoAsync(edit?.Refusal ?? fault);
            return;
        }

        await desk.ChangeAsync(changed => changed.Change(edit.Text));
    }

    private Task LetGoAsync(string refusal)
    {
        _round++;
        (_moves, Refusal) = ([], refusal);
        return PreviewAsync();
    }

    private void Forget()
    {
        _round++;
        (_preview, _moves, Refusal, Mark) = (null, [], "", null);
    }

    private void Show(PreviewAnswer? preview)
    {
        _preview = preview;
        Changed?.Invoke(this, EventArgs.Empty);
    }
}
