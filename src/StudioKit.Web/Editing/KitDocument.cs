namespace StudioKit.Web.Editing;

/// <summary>A kit's text as it stands, and what it was before: the text is the only truth of a kit.</summary>
public sealed class KitDocument
{
    private readonly Stack<string> _before = new();
    private readonly Stack<string> _after = new();

    /// <summary>Opens a text.</summary>
    /// <param name="fileName">Name of its file.</param>
    /// <param name="text">The text.</param>
    public KitDocument(string fileName, string text) => (FileName, Text) = (fileName, text);

    /// <summary>Name of its file.</summary>
    public string FileName { get; private set; }

    /// <summary>The text.</summary>
    public string Text { get; private set; }

    /// <summary>What lies beside it; it has no part in undo.</summary>
    public KitBeside Beside { get; set; } = KitBeside.Nothing;

    /// <summary>Whether a change can be taken back.</summary>
    public bool CanUndo => _before.Count > 0;

    /// <summary>Whether a change that was taken back can be made again.</summary>
    public bool CanRedo => _after.Count > 0;

    /// <summary>Gives its file another name.</summary>
    /// <param name="fileName">The name.</param>
    public void Rename(string fileName) => FileName = fileName;

    /// <summary>Puts a changed text in place of the text.</summary>
    /// <param name="text">The changed text; the same one changes nothing.</param>
    public void Change(string text)
    {
        if (text != Text)
        {
            _before.Push(Text);
            _after.Clear();
            Text = text;
        }
    }

    /// <summary>Takes the last change back.</summary>
    /// <exception cref="InvalidOperationException">There is none.</exception>
    public void Undo() => Swap(_before, _after);

    /// <summary>Makes the change again that was taken back last.</summary>
    /// <exception cref="InvalidOperationException">There is none.</exception>
    public void Redo() => Swap(_after, _before);

    private void Swap(Stack<string> from, Stack<string> to)
    {
        var text = from.Pop();
        to.Push(Text);
        Text = text;
    }
}
