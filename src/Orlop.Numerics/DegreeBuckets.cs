namespace Orlop.Numerics;

/// <summary>Unknowns in lists by degree; takes one of the least degree, the latest added first.</summary>
internal sealed class DegreeBuckets
{
    private const int None = -1;
    private readonly int[] _head;
    private readonly int[] _next;
    private readonly int[] _previous;
    private readonly int[] _bucket;
    private int _least;

    public DegreeBuckets(int count)
    {
        _head = new int[count + 1];
        _next = new int[count];
        _previous = new int[count];
        _bucket = new int[count];
        Array.Fill(_head, None);
        Array.Fill(_bucket, None);
    }

    public bool IsTaken(int item) => _bucket[item] == None;

    public void Add(int item, int degree)
    {
        _bucket[item] = degree;
        _previous[item] = None;
        _next[item] = _head[degree];
        if (_head[degree] != None)
        {
            _previous[_head[degree]] = item;
        }

        _head[degree] = item;
        _least = Math.Min(_least, degree);
    }

    public void Move(int item, int degree)
    {
        if (_bucket[item] != degree)
        {
            Remove(item);
            Add(item, degree);
        }
    }

    public int TakeLeast()
    {
        while (_head[_least] == None)
        {
            _least++;
        }

        var item = _head[_least];
        Remove(item);
        _bucket[item] = None;
        return item;
    }

    private void Remove(int item)
    {
        if (_previous[item] != None)
        {
            _next[_previous[item]] = _next[item];
        }
        else
        {
            _head[_bucket[item]] = _next[item];
        }

        if (_next[item] != None)
        {
            _previous[_next[item]] = _previous[item];
        }
    }
}
