using System.Security.Cryptography;
using System.Text;

namespace StudioKit.Kits.Editing;

/// <summary>A kit's text as it lies in its file, which can be changed value by value; comments, order, quotation marks and line ends stay.</summary>
/// <remarks>
/// Paths are written as the reader writes them: <c>flashes[0].lowest-power</c>, <c>set-ups[2].lights[1].distance</c>. Every change is read again before it is given out, and
/// refused where it would come to anything but what was asked for.
/// </remarks>
public sealed class KitText
{
    private readonly Lazy<Layout> _layout;
    private readonly Lazy<KitValue> _values;

    private KitText(string text)
    {
        Text = text;
        _layout = new(() => new Layout(text));
        _values = new(() => ValueTree.Of(_layout.Value.Root, _layout.Value));
    }

    /// <summary>The text.</summary>
    public string Text { get; }

    /// <summary>SHA-256 of the text's UTF-8 bytes, in hexadecimal digits: same hash, same file.</summary>
    /// <remarks>Parts and corrections do not count; <see cref="KitReadResult.ContentHash"/> is that of all that a plan goes by.</remarks>
    public string Hash => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(Text)));

    internal Layout Layout => _layout.Value;

    /// <summary>A kit's text, whether or not it can be read.</summary>
    /// <param name="text">The text.</param>
    /// <exception cref="ArgumentNullException">There is no text.</exception>
    public static KitText Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return new KitText(text);
    }

    /// <summary>The text with a change that an editor or <see cref="KitEditResult.Inverse"/> made.</summary>
    /// <param name="edit">The change.</param>
    /// <exception cref="ArgumentNullException">There is no change.</exception>
    /// <exception cref="ArgumentOutOfRangeException">It lies outside the text.</exception>
    public KitText With(TextEdit edit)
    {
        ArgumentNullException.ThrowIfNull(edit);
        return Of(edit.ApplyTo(Text));
    }

    /// <summary>Writes a value; a key that is not there yet is added where the kit's order of keys puts it, with the sections around it.</summary>
    /// <param name="path">Path of the key or entry.</param>
    /// <param name="value">The value as a person would type it.</param>
    /// <exception cref="ArgumentNullException">There is no path or no value.</exception>
    public KitEditResult Set(string path, string value) => Set(path, KitValue.Of(value));

    /// <summary>Writes a value, a list or a section; a key that is not there yet is added where the kit's order of keys puts it.</summary>
    /// <param name="path">Path of the key or entry.</param>
    /// <param name="value">What is to stand there.</param>
    /// <exception cref="ArgumentNullException">There is no path or no value.</exception>
    public KitEditResult Set(string path, KitValue value)
    {
        ArgumentNullException.ThrowIfNull(value);
        return On(path, value, request => request.Set(ValueTree.Trimmed(value)));
    }

    /// <summary>Takes a key or an entry away.</summary>
    /// <param name="path">Path of the key or entry.</param>
    /// <param name="withComments">Whether the comments on its lines go with it; else they stay, on lines of their own.</param>
    /// <exception cref="ArgumentNullException">There is no path.</exception>
    public KitEditResult Remove(string path, bool withComments = false) => On(path, null, request => request.Remove(withComments));

    /// <summary>Adds an entry to a list; the list's key too where it is not there yet.</summary>
    /// <param name="path">Path of the list.</param>
    /// <param name="place">Place of the entry, from 0 [1]; as many as there are to append it.</param>
    /// <param name="value">The entry.</param>
    /// <exception cref="ArgumentNullException">There is no path or no value.</exception>
    public KitEditResult Insert(string path, int place, KitValue value)
    {
        ArgumentNullException.ThrowIfNull(value);
        return On(path, value, request => request.Insert(place, ValueTree.Trimmed(value)));
    }

    /// <summary>Moves an entry of a list, with the comments about it.</summary>
    /// <param name="path">Path of the entry.</param>
    /// <param name="place">Its new place, from 0 [1].</param>
    /// <exception cref="ArgumentNullException">There is no path.</exception>
    public KitEditResult Move(string path, int place) => On(path, null, request => request.Move(place));

    /// <summary>A value as it is written, with the place where it stands.</summary>
    /// <param name="path">Path of the key or entry.</param>
    /// <returns>The value; none where the text has none there or cannot be read.</returns>
    /// <exception cref="ArgumentNullException">There is no path.</exception>
    public WrittenValue? Find(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        return KeyPath.Read(path) is { } steps && Layout.Root is not null && Way.To(steps, Layout) is { IsWhole: true, Parent: not null } way ? WrittenValue.Of(way, path) : null;
    }

    internal KitValue Values() => _values.Value;

    private KitEditResult On(string path, KitValue? value, Func<EditRequest, KitEditResult> work)
    {
        ArgumentNullException.ThrowIfNull(path);
        var request = new EditRequest(this, path);
        return EditObstacle.To(request, value) is { } refusal ? request.Refused(refusal) : work(request);
    }
}
