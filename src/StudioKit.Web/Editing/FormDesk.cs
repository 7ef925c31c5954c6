using StudioKit.Web.Engine;
using StudioKit.Web.Results;

namespace StudioKit.Web.Editing;

/// <summary>The form of the kit in hand: what of it is open, and its changes, one after the other, each made in the text.</summary>
public sealed class FormDesk
{
    private readonly IEngine _engine;
    private readonly Desk _desk;
    private Task _last = Task.CompletedTask;
    private string? _shown;
    private IReadOnlyDictionary<string, string>? _shownParts;

    /// <summary>A form that follows the kit on a desk.</summary>
    /// <param name="engine">Who reads and changes the text.</param>
    /// <param name="desk">The desk.</param>
    public FormDesk(IEngine engine, Desk desk)
    {
        ArgumentNullException.ThrowIfNull(desk);
        (_engine, _desk) = (engine, desk);
        desk.Changed += (_, _) => Follow();
    }

    /// <summary>Something of the form changed.</summary>
    public event EventHandler? Changed;

    /// <summary>Somebody wants to see a place of the form, wherever they are now.</summary>
    public event EventHandler? Called;

    /// <summary>Whether somebody looks at the form, so that it has to follow.</summary>
    public bool IsOpen { get; set; }

    /// <summary>The form; none before it was asked for.</summary>
    public FormAnswer? Form { get; private set; }

    /// <summary>Which half of the kit is shown.</summary>
    public FormRoom Room { get; private set; }

    /// <summary>Path of the group that is open; empty for none.</summary>
    public string Opened { get; private set; } = "";

    /// <summary>Path of the list to which an entry is being added; empty for none.</summary>
    public string Adding { get; private set; } = "";

    /// <summary>Path of the field that is to be in hand when the form is drawn; empty for none.</summary>
    public string Wanted { get; private set; } = "";

    /// <summary>Whether the text stands beside the form.</summary>
    public bool IsTextShown { get; private set; }

    /// <summary>Place in the text to go to; none where nobody asked.</summary>
    public Fault? Place { get; private set; }

    /// <summary>The kit's text as it stands.</summary>
    public string Text => _desk.Kit?.Text ?? "";

    /// <summary>Whether a change can be taken back.</summary>
    public bool CanUndo => _desk.Kit?.CanUndo ?? false;

    /// <summary>Whether a change that was taken back can be made again.</summary>
    public bool CanRedo => _desk.Kit?.CanRedo ?? false;

    /// <summary>Shows a half of the kit with one group open.</summary>
    /// <param name="room">The half.</param>
    /// <param name="opened">Path of the group.</param>
    /// <param name="adding">Path of the list to which an entry is to be added.</param>
    /// <param name="wanted">Path of the field to take in hand.</param>
    public Task ShowAsync(FormRoom room, string opened, string adding = "", string wanted = "")
    {
        (Room, Opened, Adding, Wanted) = (room, opened, adding, wanted);
        return AskAsync(Text);
    }

    /// <summary>Shows what is wrong: at its field, or in the text where it has none.</summary>
    /// <param name="found">What is wrong.</param>
    public Task ShowAsync(FormFault found)
    {
        ArgumentNullException.ThrowIfNull(found);
        if (found.Path.Length == 0)
        {
            ShowText(found.Fault);
            return Task.CompletedTask;
        }

        return ShowAsync(found.Room, found.Group, "", found.Path);
    }

    /// <summary>Goes to where the form has a key of the kit; to the text where no form can be shown.</summary>
    /// <param name="place">The place.</param>
    public async Task GoToAsync(FieldPlace place)
    {
        ArgumentNullException.ThrowIfNull(place);
        await ShowAsync(place.Room, place.Group, place.Adding, place.Path);
        if (Form is { Obstacle.Length: > 0 })
        {
            ShowText(null);
        }

        Called?.Invoke(this, EventArgs.Empty);
    }

    /// <summary>Goes to a place of the text, wherever somebody is.</summary>
    /// <param name="place">The place.</param>
    public void GoToText(Fault place)
    {
        ShowText(place);
        Called?.Invoke(this, EventArgs.Empty);
    }

    /// <summary>Shows the first thing that keeps the kit from being read, or the first that is wrong.</summary>
    /// <returns>What it is; none where nothing is wrong.</returns>
    public async Task<FormFault?> ShowFirstFaultAsync()
    {
        await AskAsync(Text);
        var first = Form?.Faults.FirstOrDefault(found => found.Fault.IsError) ?? (Form is { Faults.Count: > 0 } ? Form.Faults[0] : null);
        if (first is not null)
        {
            await ShowAsync(first);
        }

        return first;
    }

    /// <summary>Puts the text beside the form.</summary>
    /// <param name="place">Where to go in it; none to stay.</param>
    public void ShowText(Fault? place)
    {
        (IsTextShown, Place) = (true, place);
        Say();
    }

    /// <summary>Puts the text away.</summary>
    public void HideText()
    {
        (IsTextShown, Place) = (false, null);
        Say();
    }

    /// <summary>The wanted field is in hand, and the wanted place seen.</summary>
    public void Arrived() => (Wanted, Place) = ("", null);

    /// <summary>Makes one change, after those that were asked for before.</summary>
    /// <param name="kind">What is done.</param>
    /// <param name="path">Where.</param>
    /// <param name="values">What is written.</param>
    /// <param name="place">Place of a new or moved entry.</param>
    /// <param name="opened">Path of the group that is open afterwards; none where that stays.</param>
    /// <returns>Why it was refused; empty where it was made.</returns>
    public async Task<string> EditAsync(FormEditKind kind, string path, IReadOnlyList<FormValue> values, int place = 0, string? opened = null)
    {
        var before = _last;
        var done = new TaskCompletionSource();
        _last = done.Task;
        await before;
        try
        {
            return await MakeAsync(kind, path, values, place, opened);
        }
        catch (EngineFaultException fault)
        {
            return $"Not written: the planner stumbled. {fault.Message}";
        }
        finally
        {
            done.SetResult();
        }
    }

    /// <summary>Puts a text that was typed in place of the text.</summary>
    /// <param name="text">The text.</param>
    public Task TypeAsync(string text) => DoAsync(kit => kit.Change(text));

    /// <summary>Takes the last change back, if there is one.</summary>
    public Task UndoAsync() => CanUndo ? DoAsync(kit => kit.Undo()) : Task.CompletedTask;

    /// <summary>Makes the change again that was taken back last, if there is one.</summary>
    public Task RedoAsync() => CanRedo ? DoAsync(kit => kit.Redo()) : Task.CompletedTask;

    private async Task<string> MakeAsync(FormEditKind kind, string path, IReadOnlyList<FormValue> values, int place, string? opened)
    {
        FormEditAnswer? made;
        string text;
        do
        {
            text = Text;
            made = await _engine.AskAsync(EngineQuestions.FormEdit, new FormEditRequest(text, kind, path, values, place));
        }
        while (Text != text);

        if (made is { Refusal.Length: 0 })
        {
            (Opened, Adding) = (opened ?? Opened, opened is null ? Adding : "");
            await DoAsync(kit => kit.Change(made.Text));
        }

        return made?.Refusal ?? "";
    }

    // The form is asked for before the plan, which takes longer; nobody waits here for the plan.
    private async Task DoAsync(Action<KitDocument> change)
    {
        if (_desk.Kit is { } kit)
        {
            change(kit);
            var form = IsOpen ? AskAsync(kit.Text) : Task.CompletedTask;
            _ = _desk.ChangeAsync(_ => { });
            await form;
        }
    }

    private async Task AskAsync(string text)
    {
        (_shown, _shownParts) = (text, _desk.Kit?.Beside.Parts);
        try
        {
            var form = await _engine.AskAsync(EngineQuestions.Form, new FormRequest(text, _desk.Kit?.FileName ?? "", Room, Opened, Adding));
            if (form is not null)
            {
                Form = form;
                Say();
            }
        }
        catch (EngineFaultException)
        {
            // The desk says so when its own question fails, too; the form stays as it was.
            _shown = null;
        }
    }

    // Whoever else changes the kit, the form follows.
    private void Follow()
    {
        if (IsOpen && (Text != _shown || !ReferenceEquals(_desk.Kit?.Beside.Parts, _shownParts)))
        {
            _ = AskAsync(Text);
        }
    }

    private void Say() => Changed?.Invoke(this, EventArgs.Empty);
}
