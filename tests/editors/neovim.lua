-- Neovim's own client of the protocol meets the language server: findings, hover, inlay, fix, rename, a fresh start.
local expected = vim.fn.json_decode(vim.fn.readfile(vim.env.TRIBRACH_EXPECTED))
local patience = 15000

-- The line break in front keeps a report apart from what Neovim itself has said.
local function say(line)
  io.stdout:write('\n' .. line .. '\n')
end

local function check(name, test)
  local ok, message = pcall(test)
  say(ok and ('passed ' .. name) or ('failed ' .. name .. ': ' .. tostring(message):gsub('\n', ' ')))
end

local function eventually(what, ask)
  local answer
  vim.wait(patience, function()
    answer = ask()
    return answer ~= nil and answer ~= false
  end, 50)
  if not answer then error('waited in vain for ' .. what, 0) end
  return answer
end

local function place_of(text)
  for row, line in ipairs(vim.api.nvim_buf_get_lines(0, 0, -1, true)) do
    local column = line:find(text, 1, true)
    if column then return { line = row - 1, character = column - 1 } end
  end
  error('the session does not contain ' .. text, 0)
end

local client

local function ask(method, parameters)
  parameters.textDocument = { uri = vim.uri_from_bufnr(0) }
  local answer, why = client.request_sync(method, parameters, patience, 0)
  if not answer then error(method .. ': ' .. tostring(why), 0) end
  if answer.err then error(method .. ': ' .. answer.err.message, 0) end
  return answer.result
end

local function slip()
  for _, diagnostic in ipairs(vim.diagnostic.get(0)) do
    if diagnostic.user_data.lsp.code == expected.finding.code then return diagnostic end
  end
end

local function line_at(row)
  return vim.api.nvim_buf_get_lines(0, row, row + 1, true)[1]
end

vim.cmd('edit ' .. expected.session)
check('the server starts', function()
  local id = vim.lsp.start_client({ name = 'tribrach', cmd = { 'node', vim.env.TRIBRACH_SERVER, 'serve', '--stdio' }, root_dir = vim.fn.getcwd() })
  client = vim.lsp.get_client_by_id(id)
  vim.lsp.buf_attach_client(0, id)
  eventually('the first answer', function() return client.initialized end)
end)

check('a slip in the file is found, at its place', function()
  local found = eventually('the finding ' .. expected.finding.code, slip)
  local place = place_of(expected.finding.at)
  assert(found.lnum == place.line and found.col == place.character, 'it is at ' .. found.lnum .. ':' .. found.col)
end)

check('a hover tells the derivation', function()
  local place = place_of(expected.hover.at)
  place.character = place.character + 1
  local text = vim.fn.json_encode(ask('textDocument/hover', { position = place }))
  assert(text:find(expected.hover.says, 1, true), text)
end)

check('a derived height stands at a line end', function()
  local last = vim.api.nvim_buf_line_count(0)
  local range = { start = { line = 0, character = 0 }, ['end'] = { line = last, character = 0 } }
  local text = vim.fn.json_encode(ask('textDocument/inlayHint', { range = range }))
  assert(text:find(expected.inlay.says, 1, true), text)
end)

check('a fix leaves the right text and the finding leaves with it', function()
  eventually('the finding', slip)
  local place = place_of(expected.finding.at)
  local range = { start = place, ['end'] = { line = place.line, character = place.character + #expected.finding.at } }
  local diagnostic = { range = range, code = expected.finding.code, message = '', source = 'tribrach' }
  local actions = ask('textDocument/codeAction', { range = range, context = { diagnostics = { diagnostic } } })
  local fix
  for _, action in ipairs(actions or {}) do
    if action.edit and action.title:find(expected.fix.offers, 1, true) then fix = action end
  end
  assert(fix, 'no fix offers ' .. expected.fix.offers .. ': ' .. vim.fn.json_encode(actions))
  vim.lsp.util.apply_workspace_edit(fix.edit, client.offset_encoding)
  assert(line_at(place.line) == expected.fix.leaves, line_at(place.line))
  eventually('the finding to leave', function() return slip() == nil end)
end)

check('a mark is renamed everywhere', function()
  local place = place_of(expected.rename.from)
  place.character = place.character + 1
  vim.lsp.util.apply_workspace_edit(ask('textDocument/rename', { position = place, newName = expected.rename.to }), client.offset_encoding)
  local text = table.concat(vim.api.nvim_buf_get_lines(0, 0, -1, true), '\n')
  local _, places = text:gsub(vim.pesc(expected.rename.to), '')
  assert(places == expected.rename.places and not text:find(expected.rename.from, 1, true), places .. ' places')
end)

check('the server ends when it is told to', function()
  assert(client.initialized, 'it never started')
  client.stop()
  eventually('the end', function() return client.is_stopped() end)
end)

say('finished')
vim.cmd('qall!')
