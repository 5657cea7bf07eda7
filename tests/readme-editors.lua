-- What Neovim makes of the README's recipe, asked of Neovim itself.
local function check(what, ask)
  local answer
  vim.wait(60000, function() answer = ask() return answer end, 50)
  io.stdout:write('\n' .. (answer and 'passed ' or 'failed ') .. what .. '\n')
end

local function at(text)
  for row, line in ipairs(vim.api.nvim_buf_get_lines(0, 0, -1, true)) do
    local column = line:find(text, 1, true)
    if column then return { line = row - 1, character = column } end
  end
end

check('filetype', function() return vim.bo.filetype == 'tribrach' end)
check('comment', function() return vim.bo.commentstring == '# %s' end)
check('finding', function() return #vim.diagnostic.get(0) > 0 end)
local client = vim.lsp.get_active_clients()[1]
local function ask(method, more)
  local parameters = vim.tbl_extend('force', { textDocument = { uri = vim.uri_from_bufnr(0) } }, more)
  local answer = client.request_sync(method, parameters, 60000, 0)
  return vim.inspect(answer and answer.result)
end
check('hover', function() return ask('textDocument/hover', { position = at('1.284') }):find('1.533') end)
check('fix', function()
  local range = { start = at('1,283'), ['end'] = at('1,283') }
  return ask('textDocument/codeAction', { range = range, context = { diagnostics = {} } }):find('1.283', 1, true)
end)
check('completion', function()
  local place = at(' on ')
  place.character = place.character + 3
  return ask('textDocument/completion', { position = place }):find('PM-14', 1, true)
end)
vim.cmd('qa!')
