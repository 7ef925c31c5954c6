using StudioKit.Kits;
using StudioKit.Kits.Editing;
using StudioKit.Kits.Forms;
using StudioKit.Web.Engine.Telling;
using StudioKit.Web.Results;

namespace StudioKit.Web.Engine;

/// <summary>Forms of kits: what they show, what may be typed, and the changes that they make in the text.</summary>
/// <param name="parts">Where their parts are looked up.</param>
internal sealed class KitForms(OwnParts parts)
{
    private const string AnyName = "kit.yaml";

    private (string Text, string FileName, PartsLibrary Parts, KitForm Form)? _last;

    /// <summary>One half of a kit as a form.</summary>
    public FormAnswer Answer(FormRequest request)
    {
        var form = Of(request.Text, request.FileName);
        return new FormTelling(form, parts.Library, request.Opened, request.Adding).Of(request.Room, Obstacle(form, request.FileName));
    }

    /// <summary>What something typed would mean.</summary>
    public FieldCheckAnswer Check(FieldCheckRequest request)
    {
        var form = _last is { } last && last.Text == request.Text && last.Parts == parts.Library ? last.Form : Of(request.Text, AnyName);
        var check = form.Check(request.Path, request.Typed);
        var problem = check.IsGood || check.Diagnostics.Count == 0 ? "" : ProblemText.Of(check.Diagnostics[0].Message, PageHints.Of(check.Diagnostics[0]));
        return new FieldCheckAnswer(request.Typed, check.Meaning ?? "", problem);
    }

    /// <summary>The text with a change.</summary>
    public static FormEditAnswer Edit(FormEditRequest request)
    {
        var text = KitText.Of(request.Text);
        var made = request.Kind switch
        {
            FormEditKind.Write => text.Set(request.Path, Value(request)),
            FormEditKind.Remove => text.Remove(request.Path),
            FormEditKind.Add => text.Insert(request.Path, request.Place, Value(request)),
            FormEditKind.Move => text.Move(request.Path, request.Place),
            _ => throw new ArgumentOutOfRangeException(nameof(request), request.Kind, "No change of a form."),
        };
        return new FormEditAnswer(made.After.Text, made.Refusal is { } refusal ? ProblemText.Of(refusal.Message, refusal.Hint) : "");
    }

    private static KitValue Value(FormEditRequest request) => request.Values is [{ Key.Length: 0 } single]
        ? KitValue.Of(single.Text)
        : KitValue.SectionOf([.. request.Values.Where(value => value.Text.Trim().Length > 0).Select(value => (value.Key, value.Text))]);

    // A text that is no YAML has no fields; the editor says why.
    private static string Obstacle(KitForm form, string fileName) =>
        form.Elsewhere.Any(found => found.File == fileName) && form.Text.Set("kit", "kit").Refusal is { } refusal ? ProblemText.Of(refusal.Message, refusal.Hint) : "";

    private KitForm Of(string text, string fileName)
    {
        if (_last is not { } last || last.Text != text || last.FileName != fileName || last.Parts != parts.Library)
        {
            last = (text, fileName, parts.Library, KitForm.Of(KitText.Of(text), parts.Library, fileName));
            _last = last;
        }

        return last.Form;
    }
}
