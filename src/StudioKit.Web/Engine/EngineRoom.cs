using System.Text.Json;
using StudioKit.Web.Engine.Frames;
using StudioKit.Web.Results;

namespace StudioKit.Web.Engine;

/// <summary>Everything the worker can answer, by the kind of the question.</summary>
internal sealed class EngineRoom
{
    // How the map over a test frame is asked for.
    private const string MapOf = "map:";

    private readonly Dictionary<string, Func<string, string>> _answers = new(StringComparer.Ordinal);
    private readonly PrintedKits _prints;
    private readonly ExploredKits _explored;
    private readonly Lazy<FrameDesk> _frames;

    /// <param name="progress">Told each step of a longer answer.</param>
    /// <param name="picture">The picture that a question brings along; none where nobody hands in pictures.</param>
    public EngineRoom(IProgress<string> progress, IDecodedPicture? picture = null)
    {
        var parts = new OwnParts();
        var plans = new PlannedKits(progress, parts);
        _prints = new PrintedKits(plans);
        _explored = new ExploredKits(plans);
        Answers(EngineQuestions.Plan, plans.Answer);
        Answers(EngineQuestions.Offers, _prints.Offers);
        Answers(EngineQuestions.MakeSheets, _prints.Make);
        Answers(EngineQuestions.ZipSheets, _prints.Zip);
        Answers(EngineQuestions.Pages, _prints.Pages);
        Answers(EngineQuestions.Preview, new Previews(plans).Answer);
        Answers(EngineQuestions.Map, plans.Map);
        Answers(EngineQuestions.Edit, KitEdits.Answer);
        Answers(EngineQuestions.SceneLight, new SceneLights(plans).Answer);
        Answers(EngineQuestions.Outdoors, new OutdoorCards(plans).Answer);
        Answers(EngineQuestions.Solid, new Solids(plans).Answer);
        Answers(EngineQuestions.Beside, request =>
        {
            _prints.Forget();
            return parts.Take(request);
        });
        Answers(EngineQuestions.PartNames, OwnParts.Of);
        Answers(EngineQuestions.ReadCorrection, request => CorrectedKits.Read(request));
        Answers(EngineQuestions.Mend, new Mends(plans).Answer);
        Answers(EngineQuestions.Point, new Points(plans).Answer);

        // What test frames need is loaded with the first question about them.
        _frames = new Lazy<FrameDesk>(() => new FrameDesk(plans, picture ?? new NoPicture()));
        Answers(EngineQuestions.Read, request => _frames.Value.Read(request));
        Answers(EngineQuestions.Frame, request => _frames.Value.Frame(request));
        Answers(EngineQuestions.Ladder, request => _frames.Value.Ladder(request));
        Answers(EngineQuestions.Correct, request =>
        {
            _prints.Forget();
            _explored.End();
            return _frames.Value.Correct(request);
        });
        Answers(EngineQuestions.Open, OpenedKits.Answer);
        Answers(EngineQuestions.Starter, OpenedKits.Starter);
        var forms = new KitForms(parts);
        Answers(EngineQuestions.Form, forms.Answer);
        Answers(EngineQuestions.FormEdit, KitForms.Edit);
        Answers(EngineQuestions.FieldCheck, forms.Check);
        Answers(EngineQuestions.Parts, new PartSearch(parts).Answer);
        Answers(EngineQuestions.Complete, new Completions(parts).Answer);
        Answers(EngineQuestions.Compare, new Comparisons(plans).Answer);
        Answers(EngineQuestions.Designs, _explored.Open);
        Answers(EngineQuestions.Search, _explored.Step);
        Answers(EngineQuestions.Design, _explored.Kit);
    }

    /// <summary>Answers a question.</summary>
    /// <param name="kind">Kind of the question.</param>
    /// <param name="request">What is asked, as JSON.</param>
    /// <exception cref="ArgumentException">There is no such kind.</exception>
    /// <exception cref="JsonException">The request is not what its kind asks.</exception>
    public string Answer(string kind, string request) =>
        _answers.TryGetValue(kind, out var answer) ? answer(request) : throw new ArgumentException($"There is no question '{kind}'.", nameof(kind));

    /// <summary>Hands over a file that was made of the last kit.</summary>
    /// <param name="name">Its name.</param>
    /// <exception cref="ArgumentException">No such file was made.</exception>
    public byte[] Take(string name) => name.StartsWith(MapOf, StringComparison.Ordinal) ? _frames.Value.Map(name[MapOf.Length..])
        : name == ExploredKits.TableName ? _explored.Take(name)
        : _prints.Take(name);

    private void Answers<TRequest, TAnswer>(EngineQuestion<TRequest, TAnswer> question, Func<TRequest, TAnswer> answer) =>
        _answers.Add(question.Kind, request => JsonSerializer.Serialize(answer(Read(question, request)), question.Answer));

    private static TRequest Read<TRequest, TAnswer>(EngineQuestion<TRequest, TAnswer> question, string request) =>
        JsonSerializer.Deserialize(request, question.Request) ?? throw new JsonException($"The question '{question.Kind}' is empty.");
}
