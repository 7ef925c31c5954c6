using System.Text.Json;
using StudioKit.Web.Engine;
using StudioKit.Web.Results;

namespace StudioKit.Web.Tests.Engine;

/// <summary>The worker's answers without a browser: the same room, asked by the same messages.</summary>
internal sealed class Asked
{
    private readonly EngineRoom _room;
    private readonly Hand _hand = new();

    public Asked() => _room = new EngineRoom(new Kept(Steps), _hand);

    /// <summary>Steps that were reported.</summary>
    public List<string> Steps { get; } = [];

    public static string Demo(string name = "fen-edge.yaml") => File.ReadAllText(Path.Combine(Repository(), "kits", name));

    public TAnswer For<TRequest, TAnswer>(EngineQuestion<TRequest, TAnswer> question, TRequest request) =>
        JsonSerializer.Deserialize(_room.Answer(question.Kind, JsonSerializer.Serialize(request, question.Request)), question.Answer)!;

    public PlanAnswer Plan(string text) => For(EngineQuestions.Plan, new PlanRequest(text, "kit.yaml"));

    /// <summary>Hands in a picture and has it read.</summary>
    public ReadPicture Read(IDecodedPicture picture, PictureRequest request)
    {
        _hand.Picture = picture;
        return For(EngineQuestions.Read, request);
    }

    public byte[] Take(string name) => _room.Take(name);

    public static string Repository()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "StudioKit.sln")))
        {
            folder = Path.GetDirectoryName(folder)!;
        }

        return folder;
    }

    private sealed class Hand : IDecodedPicture
    {
        public IDecodedPicture? Picture { get; set; }

        public int Width => Picture!.Width;

        public int Height => Picture!.Height;

        public byte[] Head => Picture!.Head;

        public void Copy(int first, Span<byte> rgba) => Picture!.Copy(first, rgba);
    }

    private sealed class Kept(List<string> steps) : IProgress<string>
    {
        public void Report(string value) => steps.Add(value);
    }
}
