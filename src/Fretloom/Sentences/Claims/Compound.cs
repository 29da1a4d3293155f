using Fretloom.Claims;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Claims;

/// <summary>Reads claims joined by <c>and</c>, or by <c>or</c>, and claims with a condition.</summary>
internal static class Compound
{
    /// <summary>Reads everything that is claimed.</summary>
    public static Failure? Read(Cursor at, Scope scope, out Claim? claim)
    {
        var conditions = new Stack<Claim>();
        while (at.Accept("if"))
        {
            if (ReadJoined(at, scope, out var condition) is { } failure)
            {
                claim = null;
                return failure;
            }

            at.Accept(TokenKind.Comma);
            if (!at.Accept("then") && at.Previous.Kind != TokenKind.Comma)
            {
                claim = null;
                return Failure.Expected("', then' and what follows from the condition", at.Current, "then");
            }

            conditions.Push(condition!);
        }

        var wrong = ReadJoined(at, scope, out claim);
        while (wrong is null && conditions.TryPop(out var condition))
        {
            claim = new Claim.If(condition, claim!);
        }

        return wrong;
    }

    private static Failure? ReadJoined(Cursor at, Scope scope, out Claim? claim)
    {
        var parts = new List<Claim>();
        string? joint = null;
        claim = null;
        while (true)
        {
            if (Simple.Read(at, scope, out var part) is { } failure)
            {
                return failure;
            }

            parts.Add(part!);
            var skip = at.Current.Kind == TokenKind.Comma ? 1 : 0;
            var next = at.Peek(skip);
            if (!next.IsAny("and", "or"))
            {
                claim =
                    parts.Count == 1 ? parts[0]
                    : joint == "and" ? new Claim.And(parts.ToValueList())
                    : new Claim.Or(parts.ToValueList());
                return null;
            }

            joint ??= next.Is("and") ? "and" : "or";
            if (!next.Is(joint))
            {
                return Failure.At(
                    next,
                    "'and' and 'or' in one sentence can be read in two ways: split it into two sentences"
                );
            }

            at.Skip(skip + 1);
        }
    }
}
